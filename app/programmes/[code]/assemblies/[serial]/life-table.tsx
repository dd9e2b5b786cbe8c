import { inspectionAddress, lotAddress, recordKindAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { LifeEvent } from '@/shared/records/assembly-life'

/** All that is on record of the assembly and its lots, oldest first. */
export function LifeTable({ code, events }: { code: string; events: readonly LifeEvent[] }) {
  return (
    <Section
      heading="In order of time"
      lead="Deliveries and tests of its lots, and what was done to the board itself."
    >
      <RuledTable
        caption="What happened, oldest first"
        captionHidden
        rows={events}
        rowKey={(_event, position) => position}
        columns={[
          { label: 'On', set: 'shrink', cell: ({ on }) => (on ? <Day at={on} /> : '–') },
          {
            label: 'What',
            names: true,
            cell: ({ what, from }) => <a href={addressOf(code, from)}>{what}</a>,
          },
          { label: 'Recorded', cell: ({ message }) => message },
        ]}
      />
    </Section>
  )
}

function addressOf(code: string, from: LifeEvent['from']): string {
  switch (from.kind) {
    case 'lot':
      return lotAddress(code, from.code)
    case 'inspection':
      return inspectionAddress(code, from.id)
    case 'record':
      return recordKindAddress(code, from.recordKind)
  }
}
