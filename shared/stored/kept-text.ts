import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'
import type { Sha256 } from '@/shared/trail/sha256'

/** Longer values are remembered by their hash, so that what is remembered of a row stays small. */
const LONGEST_KEPT = 200

/**
 * A value as a text to compare: its canonical JSON, or the SHA-256 of that where it is long.
 * A value that has no canonical form, as only a change past the program can leave it, gives
 * a text that no recorded value has.
 */
export function keptText(value: unknown, sha256: Sha256, longest = LONGEST_KEPT): string {
  const text = comparableText(value)
  return text.length <= longest ? text : `${HASHED}${sha256(text)}`
}

const HASHED = 'SHA-256 '

/** Whether the text stands for a longer value. */
export const isHashed = (text: string): boolean => text.startsWith(HASHED)

/** A text that JSON writes as it stands, between quotes. */
const PLAIN = /^[ !#-[\]-\ud7ff]*$/

function comparableText(value: unknown): string {
  // Most values are these two: asked first, a comparison takes a fifth less time.
  if (value === null) return 'null'
  if (typeof value === 'string' && PLAIN.test(value)) return `"${value}"`
  try {
    return canonicalJson((value instanceof Date ? value.toISOString() : value) as JsonValue)
  } catch {
    return `not a value: ${String(value)}`
  }
}
