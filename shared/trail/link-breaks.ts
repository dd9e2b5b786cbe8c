import { GENESIS_PREVIOUS_HASH, type TrailEntry } from './entry'
import type { TrailBreak } from './trail-break'

/** What ties an entry to its neighbours. */
export type TrailLink = Pick<TrailEntry, 'seq' | 'hash' | 'previousHash'>

/**
 * Every break in the numbering and the linking of a trail, given in the order in which its
 * entries stand. The links are judged in the order of the numbers, so that a swapped pair
 * counts as out of order once and not as several wrong links as well.
 */
export function linkBreaks(links: readonly TrailLink[]): TrailBreak[] {
  if (links.length === 0) {
    return [{ kind: 'missing', seq: 1, sentence: 'The trail has no entries; a trail begins with entry 1.' }]
  }
  if (isUnbroken(links)) return []
  const misplaced = orderBreaks(links)
  const inOrder = misplaced.length === 0 ? links : [...links].sort((one, other) => one.seq - other.seq)
  return [...misplaced, ...chainBreaks(inOrder)]
}

/** The usual case, decided without building anything. */
function isUnbroken(links: readonly TrailLink[]): boolean {
  let expectedHash = GENESIS_PREVIOUS_HASH
  let expectedSeq = 1
  for (const { seq, hash, previousHash } of links) {
    if (seq !== expectedSeq || previousHash !== expectedHash) return false
    expectedSeq += 1
    expectedHash = hash
  }
  return true
}

function orderBreaks(links: readonly TrailLink[]): TrailBreak[] {
  const breaks: TrailBreak[] = []
  const seen = new Set<number>()
  let highest = 0
  for (const { seq } of links) {
    if (seen.has(seq)) {
      breaks.push({ kind: 'duplicated', seq, sentence: `Entry ${seq} is there more than once.` })
    } else if (seq < highest) {
      breaks.push({ kind: 'out-of-order', seq, sentence: `Entry ${seq} stands behind entry ${highest}.` })
    }
    seen.add(seq)
    highest = Math.max(highest, seq)
  }
  return breaks
}

/** Walks links in the order of their numbers; entries that share a number count as one place. */
function chainBreaks(links: readonly TrailLink[]): TrailBreak[] {
  const breaks: TrailBreak[] = []
  let before: readonly TrailLink[] = [{ seq: 0, hash: GENESIS_PREVIOUS_HASH, previousHash: '' }]
  let here: TrailLink[] = []
  for (const [index, link] of links.entries()) {
    here.push(link)
    if (links[index + 1]?.seq === link.seq) continue
    breaks.push(...stepBreaks(before, here))
    before = here
    here = []
  }
  return breaks
}

function stepBreaks(before: readonly TrailLink[], here: readonly TrailLink[]): TrailBreak[] {
  const lastSeq = before[0]!.seq
  const seq = here[0]!.seq
  if (seq > lastSeq + 1)
    return [{ kind: 'missing', seq: lastSeq + 1, sentence: missingSentence(lastSeq + 1, seq - 1) }]
  return here
    .filter((link) => !before.some((earlier) => earlier.hash === link.previousHash))
    .map(() =>
      seq === 1
        ? {
            kind: 'wrong-genesis',
            seq,
            sentence: 'Entry 1 is not a beginning: it points to an entry before it.',
          }
        : {
            kind: 'wrong-previous-hash',
            seq,
            sentence: `Entry ${seq} does not follow entry ${lastSeq}: the hash it was written after is another one.`,
          },
    )
}

const missingSentence = (first: number, last: number): string =>
  first === last ? `Entry ${first} is missing.` : `Entries ${first} to ${last} are missing.`
