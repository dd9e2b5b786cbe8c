import { canonicalJson, isWellFormedText, type JsonValue } from './canonical-json'
import { isUtcMillisecondInstant } from './rfc3339'
import type { Sha256 } from './sha256'

/** One entry of a programme's trail. Stored and exported field by field, as it stands. */
export type TrailEntry = {
  readonly trailId: string
  /** 1, 2, 3 … without a gap. */
  readonly seq: number
  /** When, as `2026-03-04T10:11:12.345Z`: UTC, milliseconds, always 24 characters. */
  readonly at: string
  readonly actorId: string
  /** The actor's name as it was then; a later change of name leaves it. */
  readonly actorName: string
  readonly command: string
  /** Canonical JSON text, stored and hashed verbatim: never parse it and write it out again. */
  readonly payload: string
  /** The hash of entry seq − 1, or `GENESIS_PREVIOUS_HASH` for the first. */
  readonly previousHash: string
  readonly hash: string
}

/** What a caller says of a new entry; the rest follows from the trail. */
export type EntryDraft = Pick<TrailEntry, 'trailId' | 'at' | 'actorId' | 'actorName' | 'command'> & {
  readonly payload: JsonValue
}

/** The newest entry, as far as the next one must know it. */
export type TrailHead = Pick<TrailEntry, 'trailId' | 'seq' | 'hash'>

/** The previous hash of a trail's first entry: 64 zeros, which no entry hashes to. */
export const GENESIS_PREVIOUS_HASH = '0'.repeat(64)

/**
 * The text that an entry's hash covers: the canonical JSON (RFC 8785) of the
 * entry without its hash, where `payload` stands as the JSON value it is and
 * not as a string. The members are therefore always in this order:
 *
 *     {"actorId":…,"actorName":…,"at":…,"command":…,"payload":…,"previousHash":…,"seq":…,"trailId":…}
 *
 * Because the stored payload is already canonical it is set in as it stands,
 * which makes the text cheap to rebuild. No other entry has the same text, even
 * if its payload is not JSON at all: the members before the payload are closed
 * strings, and inside the members behind it a quote is always escaped, so that
 * `,"previousHash":"` cannot occur there a second time.
 */
export function entryPreimage(entry: Omit<TrailEntry, 'hash'>): string {
  return (
    `{"actorId":${jsonString(entry.actorId)},"actorName":${jsonString(entry.actorName)}` +
    `,"at":${jsonString(entry.at)},"command":${jsonString(entry.command)},"payload":${entry.payload}` +
    `,"previousHash":${jsonString(entry.previousHash)},"seq":${entry.seq},"trailId":${jsonString(entry.trailId)}}`
  )
}

/** Anything that a JSON string may have to escape: a quote, a backslash, a control, a surrogate (and a little more). */
const MAY_NEED_ESCAPING = /[^ !#-[\]-\ud7ff]/

/** The text as a JSON string. Looking first is several times as fast as always asking JSON for it. */
const jsonString = (text: string): string =>
  MAY_NEED_ESCAPING.test(text) ? JSON.stringify(text) : `"${text}"`

/** SHA-256, in hexadecimal, of the entry's preimage. */
export const entryHash = (entry: Omit<TrailEntry, 'hash'>, sha256: Sha256): string =>
  sha256(entryPreimage(entry))

/**
 * The entry that follows `head`, or a trail's first entry when there is none.
 * A RangeError says what in the draft cannot be recorded.
 */
export function appendEntry(head: TrailHead | undefined, draft: EntryDraft, sha256: Sha256): TrailEntry {
  refuseUnfitDraft(draft)
  if (head && head.trailId !== draft.trailId) {
    throw new RangeError(
      `The entry is for trail ${draft.trailId}, but the newest entry belongs to ${head.trailId}.`,
    )
  }
  const unsealed = {
    trailId: draft.trailId,
    seq: head ? head.seq + 1 : 1,
    at: draft.at,
    actorId: draft.actorId,
    actorName: draft.actorName,
    command: draft.command,
    payload: canonicalJson(draft.payload),
    previousHash: head ? head.hash : GENESIS_PREVIOUS_HASH,
  }
  return { ...unsealed, hash: entryHash(unsealed, sha256) }
}

function refuseUnfitDraft(draft: EntryDraft): void {
  for (const field of ['trailId', 'actorId', 'actorName', 'command'] as const) {
    if (draft[field] === '')
      throw new RangeError(`The ${field} of a trail entry is empty; it has to be given.`)
    if (!isWellFormedText(draft[field])) {
      throw new RangeError(`The ${field} of a trail entry holds half of a character pair (a lone surrogate).`)
    }
  }
  if (!isUtcMillisecondInstant(draft.at)) {
    throw new RangeError(
      `"${draft.at}" is not a UTC time with milliseconds, such as 2026-03-04T10:11:12.345Z.`,
    )
  }
}
