import { routeCardAddress } from '@/app/addresses'
import { placeAddress } from '@/app/place-address'
import { Digest } from '@/app/ui/digest'
import { Moment, momentInWords } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable, type Column } from '@/app/ui/ruled-table'
import { entryLabel, entryTold } from '@/shared/commands/entry-told'
import type { TrailEntry } from '@/shared/trail/entry'
import { EntryText } from './entry-text'

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

/** By the works’ clock; a text that is no instant, as an altered entry may hold, as it stands. */
const atWorks = (instant: string): string =>
  Number.isNaN(Date.parse(instant)) ? instant : momentInWords(instant)

function What({ entry: { command, payload, code } }: { entry: EntryShown }) {
  const told = entryTold({ command, payload }, atWorks)
  const message = [told?.what, told?.words].filter(Boolean).join(' – ')
  return (
    <div className="entry">
      <p>
        <strong>{entryLabel(command)}</strong>
        {told && <>: {code ? <a href={placeAddress(code, told.leads)}>{told.subject}</a> : told.subject}</>}
      </p>
      {message && <p className="entry-says">{message}</p>}
      <Disclosure summary="Full entry" open={!told} printed={false}>
        <EntryText payload={payload} />
      </Disclosure>
    </div>
  )
}
