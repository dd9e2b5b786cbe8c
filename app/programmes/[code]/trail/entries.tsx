import { routeCardAddress } from '@/app/addresses'
import { Digest } from '@/app/ui/digest'
import { Moment } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable, type Column } from '@/app/ui/ruled-table'
import { POLICY, type CommandName } from '@/shared/policy'
import type { TrailEntry } from '@/shared/trail/entry'
import { EntryText } from './entry-text'
import { placeOf } from './place-of'
import { summaryOf } from './summary'

/** An entry, and the code of the programme it belongs to when it belongs to one. */
export type EntryShown = TrailEntry & { readonly code?: string | undefined }

interface EntriesProps {
  entries: readonly EntryShown[]
  /** Entries of several trails: each says which. */
  several?: boolean
}

/** Entries of a trail: who, when, what and why, with all that was recorded folded under each. */
export function Entries({ entries, several = false }: EntriesProps) {
  return (
    <RuledTable
      caption="Entries of the trail"
      captionHidden
      rows={entries}
      rowKey={({ trailId, seq }) => `${trailId} ${seq}`}
      columns={several ? [TRAIL, ...COLUMNS] : COLUMNS}
    />
  )
}

const TRAIL: Column<EntryShown> = {
  label: 'Trail',
  set: 'shrink',
  cell: ({ code }) => (code ? <a href={routeCardAddress(code)}>{code}</a> : 'installation'),
}

const COLUMNS: Column<EntryShown>[] = [
  { label: 'No.', set: 'shrink', cell: ({ seq }) => seq },
  { label: 'When', set: 'shrink', cell: ({ at }) => <Moment at={at} /> },
  { label: 'Who', set: 'shrink', cell: ({ actorName }) => actorName },
  { label: 'What', names: true, cell: (entry) => <What entry={entry} /> },
  { label: 'Hash', set: 'shrink', cell: ({ hash }) => <Digest value={hash} /> },
]

function What({ entry: { command, payload, code } }: { entry: EntryShown }) {
  const { subject, says } = summaryOf(payload)
  const place = code && placeOf(code, command, payload)
  return (
    <div className="entry">
      <p>
        <strong>{deedOf(command)}</strong>
        {subject && <>: {place ? <a href={place}>{subject}</a> : subject}</>}
      </p>
      {says && <p className="entry-says">{says}</p>}
      <Disclosure summary="All that was recorded" printed={false}>
        <EntryText payload={payload} />
      </Disclosure>
    </div>
  )
}

/** What a command does, in the policy table's words. */
export const deedOf = (command: string): string =>
  POLICY[command as CommandName]?.does ?? BESIDE_THE_DOOR[command] ?? command

/** Entries that no command wrote: nobody could have been authorised for them. */
const BESIDE_THE_DOOR: Readonly<Record<string, string>> = {
  'first-administrator': 'Make the first administrator',
  'renew-first-administrator': 'Give the first administrator a new one-time password',
  'bind-identity': 'Bind a person to their identity at the provider',
  'carry-concessions': 'Note what concessions were asked for as data',
}
