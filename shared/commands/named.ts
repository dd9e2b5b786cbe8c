import { findItem, findLimit, findParameter, findRule } from '@/shared/catalogue/standard-plan'
import { counted } from '@/shared/quantity/counted'
import { kindOf } from '@/shared/columns/column-kinds'
import { formatQuantity } from '@/shared/quantity/format'
import { CHARACTERISTICS } from '@/shared/records/characteristics'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { ownMember } from '@/shared/own-member'

/*
 * What an entry's keys are called today. A key that is no longer known, since
 * an earlier version recorded it, is its own name.
 */

/** `title` is what the entry itself recorded: an item that a programme added is in no catalogue. */
export const itemName = (key: string, title?: string): string => findItem(key)?.title ?? title ?? key
export const parameterName = (key: string): string => findParameter(key)?.label ?? key
export const limitName = (key: string): string => findLimit(key)?.label ?? key
export const ruleName = (id: string): string => findRule(id)?.title ?? id
export const recordKindName = (key: string): string => ownMember(RECORD_KINDS, key)?.label ?? key
export const methodName = (key: string): string => ownMember(TEST_METHODS, key)?.label ?? key
export const characteristicName = (key: string): string => ownMember(CHARACTERISTICS, key)?.label ?? key

/** A parameter's value in a few words: a cell with its unit, a table by its rows. */
export function valueInBrief(parameter: string, value: unknown): string {
  const shape = findParameter(parameter)?.shape
  if (shape?.kind === 'field' && value !== null && typeof value !== 'object')
    return kindOf(shape.column).inWords(shape.column, value)
  if (Array.isArray(value)) return counted(value.length, 'row', 'rows')
  return typeof value === 'object' && value !== null ? 'a table' : String(value)
}

/** "at most 0.25 mm" */
export function boundInWords(key: string, value: number): string {
  const limit = findLimit(key)
  return limit ? `${limit.direction} ${formatQuantity(value, limit.unit, 6)}` : String(value)
}

/** ", by change notice 3", where one brought it. */
export const byNotice = (notice: number | undefined): string =>
  notice === undefined ? '' : `, by change notice ${notice}`

/** "10 mm → 12 mm" */
export const fromTo = (before: string, now: string): string => `${before} → ${now}`
