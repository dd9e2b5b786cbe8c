import { Day } from '@/app/ui/date'
import { Digest } from '@/app/ui/digest'
import { RuledTable } from '@/app/ui/ruled-table'
import type { EvidenceEntry } from '@/shared/gate/programme-state'

/** What is attached, with the digest that names each file's content. */
export function EvidencePrinted({ entries }: { entries: readonly EvidenceEntry[] }) {
  if (entries.length === 0) return null
  return (
    <RuledTable
      caption="Evidence"
      rows={entries}
      rowKey={({ id }) => id}
      columns={[
        { label: 'Kind', set: 'shrink', cell: ({ kind }) => kind },
        { label: 'What', names: true, cell: ({ fileName, url }) => fileName ?? url ?? '' },
        { label: 'Note', cell: ({ note }) => note || '–' },
        {
          label: 'By',
          cell: ({ addedByName, at }) => (
            <>
              {addedByName}, <Day at={at} />
            </>
          ),
        },
        { label: 'SHA-256', cell: ({ sha256 }) => (sha256 ? <Digest value={sha256} full /> : 'a link') },
      ]}
    />
  )
}
