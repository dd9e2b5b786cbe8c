import { formatNumber } from '@/shared/quantity/format'
import type { Measured } from '@/shared/rules/finding'
import { count, measure } from '@/shared/rules/measure'
import { FEWEST_FOR_NORMALITY, normalityLook } from '@/shared/statistics/comparison/normality'
import type { SpecimenTally } from '@/shared/lot-tests/specimen-tally'

/** Whether the readings of a sample may be judged by mean and spread, which only normal readings may. */
export interface LookAtNormality {
  readonly readings: number
  /** Undefined where the readings are too few, or all alike, to show a shape. */
  readonly pValue: number | undefined
  /** So far from normal that pieces are counted instead. */
  readonly skewed: boolean
}

/** A look at the worst reading of every specimen; `leastPValue` is a fraction. */
export function lookAtNormality({ worstBySpecimen }: SpecimenTally, minPValue: number): LookAtNormality {
  const readings = [...worstBySpecimen.values()]
  const shapeless =
    readings.length < FEWEST_FOR_NORMALITY ||
    !readings.every(Number.isFinite) ||
    readings.every((reading) => reading === readings[0])
  if (shapeless) return { readings: readings.length, pValue: undefined, skewed: false }
  const { pValue } = normalityLook(readings)
  return { readings: readings.length, pValue, skewed: pValue < minPValue }
}

export function normalityInWords({ readings, pValue, skewed }: LookAtNormality): string {
  if (pValue === undefined)
    return `${readings} readings are too few or too alike to look whether they are normal.`
  const seen = `p ${formatNumber(pValue, 2)} by Anderson–Darling`
  return skewed
    ? `The readings are not normal (${seen}): pieces are counted instead.`
    : `Nothing speaks against normal readings (${seen}).`
}

/** The same as data. */
export const normalityMeasured = ({ readings, pValue, skewed }: LookAtNormality): Measured => ({
  lookedAt: count(readings),
  skewed,
  ...(pValue !== undefined && { normality: measure(pValue * 100, '%') }),
})
