import { benchAddress, defectGuideAddress, inspectionAddress, inspectionsAddress } from '@/app/addresses'
import { GatesShut } from '@/app/frame/gates-shut'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Notice } from '@/app/ui/notice'
import { STAGE_OF_INSPECTION } from '@/shared/gate/shut-gates'
import { refusal } from '@/shared/policy'
import { InspectionPlaces } from '../places'
import { planRead } from '../plan-read'
import { BenchEntry } from './bench-entry'
import { LastRecorded } from './last-recorded'
import { repeatedFor } from './repeated'

export const generateMetadata = programmeTitle(({ code }) => `At the bench, ${code}`)

/** Entry at the bench, one assembly after another. */
export default programmePage<object, { after?: string }>(async ({ visit, code, searchParams: { after } }) => {
  const { inspections } = visit.view.state.facts.records
  const plan = await planRead(visit.view)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={inspectionsAddress(code)}
      place={[{ text: 'Inspections', href: inspectionsAddress(code) }, { text: 'At the bench' }]}
      title="At the bench"
      supplement="One assembly after another: details are kept for the next board"
      cells={[{ label: 'Inspected so far', value: inspections.length }]}
    >
      {(view) => {
        const refused = refusal('record-inspection', view.actor)
        const repeated = repeatedFor(view, after)
        return (
          <>
            <InspectionPlaces code={view.code} at={benchAddress(view.code)} />
            {repeated.last && (
              <Notice kind="success" announced>
                <a href={inspectionAddress(view.code, repeated.last.id)}>{repeated.last.assembly}</a> is
                recorded:{' '}
                {repeated.last.defects.length === 0
                  ? 'no defect.'
                  : repeated.last.defects.map(({ kind, joint }) => `${kind} at ${joint}`).join('; ') + '.'}
              </Notice>
            )}
            {refused ? (
              <Notice kind="info">{refused}</Notice>
            ) : (
              <>
                <GatesShut view={view} stage={STAGE_OF_INSPECTION} what="Assemblies are inspected" />
                <BenchEntry view={view} repeated={repeated} plan={plan} />
              </>
            )}
            <p>
              In doubt of a kind: the <a href={defectGuideAddress(view.code)}>guide to defects</a> shows each
              in section.
            </p>
            <LastRecorded view={view} />
          </>
        )
      }}
    </ProgrammeSheet>
  )
})
