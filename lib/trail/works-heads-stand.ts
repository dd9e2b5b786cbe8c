import type { RowReader } from '@/lib/db/row-reader'
import type { StoredBreak } from '@/shared/stored/stored-break'
import type { WorksHead } from '@/shared/trail/works-head'

/** A head that an entry names, with the number of that entry. */
export interface NamedHead extends WorksHead {
  readonly inEntry: number
}

/** The heads of the works that entries name and that do not stand in their trails any more; one statement. */
export async function fallenHeads(reader: RowReader, heads: readonly NamedHead[]): Promise<StoredBreak[]> {
  if (heads.length === 0) return []
  const rows = await reader.rows<{ trailId: string; seq: number; hash: string }>(
    `SELECT entry."trailId", entry."seq", entry."hash" FROM "TrailEntry" AS entry
     JOIN (SELECT unnest($1::text[]) AS "trailId", unnest($2::int[]) AS "seq") AS named
       ON named."trailId" = entry."trailId" AND named."seq" = entry."seq"`,
    [heads.map(({ trailId }) => trailId), heads.map(({ seq }) => seq)],
  )
  const stands = new Set(rows.map(keyOf))
  return heads
    .filter((head) => !stands.has(keyOf(head)))
    .map(({ inEntry, kind, code, seq }) => ({
      kind: 'works-head',
      seq: inEntry,
      of: { kind, code },
      at: seq,
    }))
}

const keyOf = ({ trailId, seq, hash }: Pick<WorksHead, 'trailId' | 'seq' | 'hash'>): string =>
  `${trailId} ${seq} ${hash}`
