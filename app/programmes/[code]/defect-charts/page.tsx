import { addressPart } from '@/app/address-part'
import { inspectionsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import type { DefectChartAsked } from './chart-asked'
import { DefectCharts } from './defect-charts'

interface DefectChartsPageProps {
  params: Promise<{ code: string }>
  searchParams: Promise<DefectChartAsked>
}

export async function generateMetadata({ params }: DefectChartsPageProps) {
  return { title: `Defect control charts, ${addressPart((await params).code)} – Liquidus` }
}

/** What inspections find, in the order they find it, against its own level. */
export default async function DefectChartsPage({ params, searchParams }: DefectChartsPageProps) {
  const { code: programme } = await params
  const asked = await searchParams
  const visit = await visitProgramme(programme)
  const code = visit.view.code
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={inspectionsAddress(code)}
      place={[{ text: 'Inspections', href: inspectionsAddress(code) }, { text: 'Defect control charts' }]}
      title="Defect control charts"
      supplement="Whether soldering still makes as few defects as it did"
      cells={[{ label: 'Inspections', value: visit.view.state.facts.records.inspections.length }]}
    >
      {(view) => <DefectCharts view={view} asked={asked} />}
    </ProgrammeSheet>
  )
}
