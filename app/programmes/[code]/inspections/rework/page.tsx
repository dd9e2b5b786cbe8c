import { inspectionsAddress, reworkAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { InspectionPlaces } from '../places'
import { HeatsAndCost } from './heats-and-cost'
import { Sections } from './sections'

interface ReworkPageProps {
  params: Promise<{ code: string }>
}

/** Joints mended, how often each was heated and what it cost; and joints cut open. */
export default async function ReworkPage({ params }: ReworkPageProps) {
  const { code: asked } = await params
  const visit = await visitProgramme(asked)
  const code = visit.view.code
  const { byKind } = visit.view.state.facts.records
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={inspectionsAddress(code)}
      place={[{ text: 'Inspections', href: inspectionsAddress(code) }, { text: 'Rework and sections' }]}
      title="Rework and sections"
      supplement="How often each joint was heated and what it cost, and what joints show when cut open"
      cells={[
        { label: 'Visits of rework', value: byKind.get('rework')?.length ?? 0 },
        { label: 'Joints cut open', value: byKind.get('microsection')?.length ?? 0 },
      ]}
    >
      {(view) => (
        <>
          <InspectionPlaces code={view.code} at={reworkAddress(view.code)} />
          <HeatsAndCost view={view} />
          <Sections view={view} />
        </>
      )}
    </ProgrammeSheet>
  )
}
