import { LogTable } from '@/app/programmes/[code]/logs/log-table'
import { LotTable } from '@/app/programmes/[code]/lots/lot-table'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Inspection } from '@/shared/records/inspection'
import { everyLog } from '@/shared/records/every-log'

/** What the findings rest on: lots, logs and inspections. Their readings stay in the exports. */
export function RecordsPrinted({ view }: { view: ProgrammeView }) {
  const { records } = view.state.facts
  const { lots, inspections } = records
  const logs = everyLog(records)
  return (
    <>
      <Section heading="Lots">
        {lots.length > 0 ? <LotTable view={view} lots={lots} /> : <p>None received.</p>}
      </Section>
      <Section heading="Logs">
        {logs.length > 0 ? <LogTable view={view} logs={logs} /> : <p>None opened.</p>}
      </Section>
      <Section heading="Inspections">
        {inspections.length > 0 ? <InspectionTable inspections={inspections} /> : <p>None recorded.</p>}
      </Section>
    </>
  )
}

const InspectionTable = ({ inspections }: { inspections: readonly Inspection[] }) => (
  <RuledTable
    caption="Inspections"
    captionHidden
    rows={inspections}
    rowKey={({ id }) => id}
    columns={[
      { label: 'Assembly', names: true, cell: ({ assembly }) => assembly },
      { label: 'On', set: 'shrink', cell: ({ inspectedOn }) => <Day at={inspectedOn} /> },
      { label: 'By', cell: ({ inspector }) => inspector },
      { label: 'Magnified', set: 'number', cell: ({ magnification }) => `${magnification} ×` },
      { label: 'Joints inspected', set: 'number', cell: ({ jointsSeen }) => jointsSeen },
      {
        label: 'Defects',
        cell: ({ defects }) =>
          defects.map(({ kind, joint }) => `${joint}: ${kind}`).join('; ') || 'none found',
      },
    ]}
  />
)
