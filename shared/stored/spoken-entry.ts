import type { JsonValue } from '@/shared/trail/canonical-json'
import type { ExpectedRows } from './expected-rows'

/** What an entry recorded, by member. A member that older entries lack is undefined. */
export type Said = Readonly<Record<string, JsonValue | undefined>>

/** An entry as far as it says what was written. */
export interface SpokenEntry {
  readonly trailId: string
  readonly at: string
  readonly actorId: string
  readonly actorName: string
  readonly said: Said
}

/** What an entry of one command makes of the rows. */
export type Writes = (entry: SpokenEntry, rows: ExpectedRows) => void

/** The members of a list that an entry recorded; nothing where there is no list. */
export const saidList = (value: JsonValue | undefined): readonly Said[] =>
  Array.isArray(value) ? (value as readonly Said[]) : []

/** The members of an object that an entry recorded; nothing where there is no object. */
export const saidObject = (value: JsonValue | undefined): Said =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Said) : {}

/** The object without the members that another place holds. */
export function without(said: Said, ...members: readonly string[]): JsonValue {
  return Object.fromEntries(Object.entries(said).filter(([name]) => !members.includes(name))) as JsonValue
}
