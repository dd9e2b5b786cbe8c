import { Digest } from '@/app/ui/digest'
import { Moment } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable } from '@/app/ui/ruled-table'
import { POLICY, type CommandName } from '@/shared/policy'
import type { TrailEntry } from '@/shared/trail/entry'
import { EntryText } from './entry-text'
import { summaryOf } from './summary'

/** Entries of a trail: who, when, what and why, with all that was recorded folded under each. */
export function Entries({ entries }: { entries: readonly TrailEntry[] }) {
  return (
    <RuledTable
      caption="Entries of the trail"
      captionHidden
      rows={entries}
      rowKey={({ seq }) => seq}
      columns={[
        { label: 'No.', set: 'shrink', cell: ({ seq }) => seq },
        { label: 'When', set: 'shrink', cell: ({ at }) => <Moment at={at} /> },
        { label: 'Who', set: 'shrink', cell: ({ actorName }) => actorName },
        {
          label: 'What',
          names: true,
          cell: ({ command, payload }) => (
            <>
              <strong>{deedOf(command)}</strong> {summaryOf(payload)}
              <Disclosure summary="All that was recorded" printed={false}>
                <EntryText payload={payload} />
              </Disclosure>
            </>
          ),
        },
        { label: 'Hash', set: 'shrink', cell: ({ hash }) => <Digest value={hash} /> },
      ]}
    />
  )
}

/** What a command does, in the policy table's words. */
export const deedOf = (command: string): string =>
  POLICY[command as CommandName]?.does ?? command.replaceAll('-', ' ')
