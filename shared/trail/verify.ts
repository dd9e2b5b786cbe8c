import { isWellFormedText } from './canonical-json'
import { entryHash, type TrailEntry } from './entry'
import { linkBreaks, type TrailLink } from './link-breaks'
import { isUtcMillisecondInstant } from './rfc3339'
import type { Sha256 } from './sha256'
import type { ClockStep, TrailBreak } from './trail-break'
import { endBreaks, type TrailEnd } from './trail-end'
import { sealBreaks, type TrailSeal } from './trail-seal'

/** What a walk over a whole trail found. */
export type TrailVerdict = {
  readonly intact: boolean
  readonly entryCount: number
  /** The entry with the highest number, whose hash is to be compared with one kept elsewhere. */
  readonly newest: Pick<TrailEntry, 'seq' | 'hash'> | undefined
  /** Every break, lowest entry first. */
  readonly breaks: readonly TrailBreak[]
  readonly firstBreak: TrailBreak | undefined
  /** Where time runs backwards; the trail can be whole all the same. */
  readonly clockSteps: readonly ClockStep[]
  /** The verdict in words. */
  readonly sentence: string
}

export type TrailVerifier = {
  /** Takes the next entry as it stands in the trail. */
  add(entry: TrailEntry): void
  /** The verdict over all entries taken so far; against where the trail says it ends, when that is known. */
  finish(end?: TrailEnd): TrailVerdict
}

/**
 * Verifies a trail entry by entry, so that a long one can be read in pages and the walk
 * interrupted between them. Keeps only numbers and hashes. Never throws for a bad entry:
 * whatever is wrong becomes a break.
 */
export function trailVerifier(sha256: Sha256, seals: readonly TrailSeal[] = []): TrailVerifier {
  const links: TrailLink[] = []
  const contentBreaks: TrailBreak[] = []
  const clockSteps: ClockStep[] = []
  let trailId: string | undefined
  let before = ''
  let entryCount = 0

  return {
    add(entry) {
      entryCount += 1
      const problem = malformation(entry)
      if (problem) {
        contentBreaks.push({
          kind: 'malformed',
          seq: entryCount,
          sentence: `The entry in place ${entryCount} ${problem}.`,
        })
        return
      }
      const { seq, at, hash, previousHash } = entry
      // All have one form, so that the later text is the later time.
      if (at < before) clockSteps.push({ seq, at, before })
      before = at
      trailId ??= entry.trailId
      if (entry.trailId !== trailId) {
        contentBreaks.push({
          kind: 'foreign',
          seq,
          sentence: `Entry ${seq} belongs to another trail (${entry.trailId}).`,
        })
      }
      if (entryHash(entry, sha256) !== hash) {
        contentBreaks.push({
          kind: 'altered',
          seq,
          sentence: `Entry ${seq} was altered: its content does not give its hash.`,
        })
      }
      links.push({ seq, hash, previousHash })
    },
    finish(end) {
      const newest = newestOf(links)
      const breaks = [
        ...contentBreaks,
        ...linkBreaks(links),
        ...(end ? endBreaks(newest, end) : []),
        ...sealBreaks(links, seals, sha256),
      ]
      breaks.sort((one, other) => one.seq - other.seq)
      return verdict(entryCount, newest, breaks, clockSteps)
    },
  }
}

/** Verifies a whole trail that is at hand. */
export function verifyTrail(
  entries: Iterable<TrailEntry>,
  sha256: Sha256,
  seals: readonly TrailSeal[] = [],
): TrailVerdict {
  const verifier = trailVerifier(sha256, seals)
  for (const entry of entries) verifier.add(entry)
  return verifier.finish()
}

const FIELDS = [
  'trailId',
  'at',
  'actorId',
  'actorName',
  'command',
  'payload',
  'previousHash',
  'hash',
] as const

/** What keeps an entry of unknown origin from being read as one; undefined when nothing does. */
function malformation(entry: TrailEntry): string | undefined {
  if (typeof entry !== 'object' || entry === null) return 'is not an entry'
  if (!Number.isSafeInteger(entry.seq) || entry.seq < 1) return 'has no number (seq)'
  if (!hasAllText(entry)) return `has no text for ${FIELDS.find((field) => typeof entry[field] !== 'string')}`
  if (!isUtcMillisecondInstant(entry.at)) return `has no valid UTC time ("${entry.at}")`
  // Hashing replaces a lone surrogate, so that two payloads could share a hash; no written payload has one.
  if (!isWellFormedText(entry.payload)) return 'has a payload with half of a character pair'
  return undefined
}

/** Written out, because a loop over the names costs as much as the hashing. */
const hasAllText = (entry: TrailEntry): boolean =>
  typeof entry.trailId === 'string' &&
  typeof entry.at === 'string' &&
  typeof entry.actorId === 'string' &&
  typeof entry.actorName === 'string' &&
  typeof entry.command === 'string' &&
  typeof entry.payload === 'string' &&
  typeof entry.previousHash === 'string' &&
  typeof entry.hash === 'string'

function newestOf(links: readonly TrailLink[]): TrailVerdict['newest'] {
  let newest: TrailLink | undefined
  for (const link of links) if (!newest || link.seq > newest.seq) newest = link
  return newest && { seq: newest.seq, hash: newest.hash }
}

function verdict(
  entryCount: number,
  newest: TrailVerdict['newest'],
  breaks: TrailBreak[],
  clockSteps: readonly ClockStep[],
): TrailVerdict {
  const firstBreak = breaks[0]
  const sentence = firstBreak
    ? `The trail is broken, first at entry ${firstBreak.seq}. ${firstBreak.sentence}`
    : `The trail is whole: ${entryCount} ${entryCount === 1 ? 'entry' : 'entries'}, none altered, missing or out of order.`
  return { intact: !firstBreak, entryCount, newest, breaks, firstBreak, clockSteps, sentence }
}
