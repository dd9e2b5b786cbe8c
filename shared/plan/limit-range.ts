import type { Unit } from '@/shared/quantity/unit'
import { formatQuantity } from '@/shared/quantity/format'
import { isToldFromZero } from '@/shared/quantity/smallest-number'
import type { Limit, LimitRange } from './requirement'

/**
 * A confidence or a coverage of a population: below one half nothing is shown, and all of it
 * would take a sample without end.
 */
export const SHOWN_SHARE: LimitRange = { min: 50, max: 99.99 }
/** A share of a population that is neither none nor all of it. */
export const OPEN_SHARE: LimitRange = { min: 1e-6, max: 99.99 }

const BY_UNIT: Partial<Record<Unit, LimitRange>> = {
  '%': { min: 0, max: 100 },
  '% RH': { min: 0, max: 100 },
  '°': { min: 0, max: 180 },
  // From absolute zero to beyond what any solder, board or oven stands.
  '°C': { min: -273.15, max: 2000 },
  'per million': { min: 0, max: 1e6 },
}
const ANY_SIZE: LimitRange = { min: 0, max: 1e9 }

/** Units in which nothing keeps to a limit of at most zero: a length, a time or a ratio is always more. */
const ALWAYS_MORE: readonly Unit[] = ['mm', 'µm', '×', 's', 'h', 'days', 'months', 'K', 'K/s', '°', 'Ω']
const MIN_SIZE = 1e-6

/** The values that a document can demand of this limit: sizes are never negative, shares never more than all. */
export function limitRange({ within, unit, direction }: Limit): LimitRange {
  if (within) return within
  const range = BY_UNIT[unit] ?? ANY_SIZE
  return direction === 'at most' && ALWAYS_MORE.includes(unit) ? { ...range, min: MIN_SIZE } : range
}

/** Why a limit cannot have this value, as a sentence; undefined when it can. */
export function impossibleLimit(limit: Limit, value: number): string | undefined {
  const { min, max } = limitRange(limit)
  if (value >= min && value <= max && isToldFromZero(value)) return undefined
  const [from, to] = [min, max].map((end) => formatQuantity(end, limit.unit, 6))
  return `This limit lies between ${from} and ${to}.`
}
