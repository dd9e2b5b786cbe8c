import { inspectionsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import type { DefectChartAsked } from './chart-asked'
import { DefectCharts } from './defect-charts'

export const generateMetadata = programmeTitle(({ code }) => `Defect control charts, ${code}`)

/** What inspections find, in the order they find it, against its own level. */
export default programmePage<object, DefectChartAsked>(async ({ visit, code, searchParams: asked }) => {
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
})
