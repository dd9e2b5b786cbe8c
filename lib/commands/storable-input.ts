import { Refused } from '@/shared/refused'
import { isKept, keptNumber } from '@/shared/quantity/kept-number'
import { isWellFormedText } from '@/shared/trail/canonical-json'

/** PostgreSQL's text and jsonb hold no U+0000 (PostgreSQL manual, sections 8.3 and 8.14). */
const NOTHING = '\0'
/** Embeddings, overrides and isolates, which show letters in another order than they are in (UAX #9, section 2). */
const TURNS_LETTERS = /[\u202a-\u202e\u2066-\u2069]/
/** A character that is seen: no blank, no control, nothing of no width (Unicode, Default_Ignorable_Code_Point), no empty Braille cell. */
const SEEN = /[^\p{White_Space}\p{Cc}\p{Cf}\p{Default_Ignorable_Code_Point}\u2800]/u

/** No record needs as many levels; the trail's canonical JSON ends at 200. */
const DEEPEST_NESTING = 100

/**
 * An input as it can be kept: texts composed (Unicode NFC), so that two codes that look alike are
 * one, and numbers to the digits that a database gives back (`keptNumber`). Parts that are right
 * already are handed on as they are. Refused, with the field, is a text that the database or the
 * trail cannot hold, that would show other than it reads, or of which nothing would show.
 */
export function storableInput(input: unknown): unknown {
  const fields: Record<string, string> = {}
  const kept = storable(input, [], fields)
  const [first] = Object.values(fields)
  if (first) throw new Refused(first, fields)
  return kept
}

function storable(value: unknown, path: readonly string[], fields: Record<string, string>): unknown {
  if (typeof value === 'string') return storableText(value, path, fields)
  if (typeof value === 'number') return Number.isFinite(value) ? keptNumber(value) : value
  if (path.length > DEEPEST_NESTING)
    throw new Refused('The input is nested deeper than anything that is recorded.')
  if (Array.isArray(value)) return storableList(value, path, fields)
  return value !== null && typeof value === 'object' ? storableObject(value, path, fields) : value
}

function storableText(text: string, path: readonly string[], fields: Record<string, string>): string {
  const message = whyNotStorable(text)
  if (message) fields[path.join('.')] ??= message
  return text.normalize('NFC')
}

function whyNotStorable(text: string): string | undefined {
  if (text.includes(NOTHING)) return 'The text holds a character that cannot be kept (NUL). Type it again.'
  if (!isWellFormedText(text)) return 'The text holds half a character. Type it again.'
  if (TURNS_LETTERS.test(text))
    return 'The text holds an unseen mark that turns the order of its letters. Type it again without.'
  return text.trim() !== '' && !SEEN.test(text)
    ? 'The text holds nothing that can be seen. Type it again.'
    : undefined
}

/** Copied only from the first cell on that changes: a million readings mostly stay the list they are. */
function storableList(
  list: readonly unknown[],
  path: readonly string[],
  fields: Record<string, string>,
): readonly unknown[] {
  let copy: unknown[] | undefined
  for (let index = 0; index < list.length; index++) {
    const cell = list[index]
    if (typeof cell === 'number' && isKept(cell)) continue
    const kept = storable(cell, [...path, String(index)], fields)
    if (!Object.is(kept, cell)) (copy ??= [...list])[index] = kept
  }
  return copy ?? list
}

function storableObject(object: object, path: readonly string[], fields: Record<string, string>): object {
  const entries = Object.entries(object)
  const kept = entries.map(
    ([name, cell]) => [storableText(name, path, fields), storable(cell, [...path, name], fields)] as const,
  )
  const same = kept.every(
    ([name, cell], index) => name === entries[index]?.[0] && Object.is(cell, entries[index]?.[1]),
  )
  return same ? object : Object.fromEntries(kept)
}
