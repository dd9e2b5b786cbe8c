import type { TrailLink } from './link-breaks'
import type { TrailBreak } from './trail-break'

/** Where a stored trail says that it ends: 0 and '' for one that has no entries. */
export type TrailEnd = { readonly seq: number; readonly hash: string }

/** A trail whose newest entry is not the one that it says it ends with: one break, or none. */
export function endBreaks(newest: Pick<TrailLink, 'seq' | 'hash'> | undefined, end: TrailEnd): TrailBreak[] {
  const kept = newest ?? { seq: 0, hash: '' }
  if (kept.seq === end.seq && kept.hash === end.hash) return []
  const message = `The trail says it ends at entry ${end.seq} (${hashInWords(end.hash)})`
  if (kept.seq === end.seq)
    return [
      {
        kind: 'other-end',
        seq: end.seq,
        sentence: `${message}, but that entry’s hash is ${hashInWords(kept.hash)}.`,
      },
    ]
  return [
    {
      kind: kept.seq < end.seq ? 'cut-off' : 'other-end',
      seq: Math.min(kept.seq, end.seq) + 1,
      sentence: `${message}, but the newest entry kept is ${kept.seq === 0 ? 'none' : kept.seq}.`,
    },
  ]
}

const hashInWords = (hash: string): string => (hash === '' ? 'no hash' : `hash ${hash.slice(0, 12)}…`)
