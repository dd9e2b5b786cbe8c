import { minCountUpTo } from '@/shared/statistics/intervals/min-count'
import { normalQuantile } from '@/shared/statistics/distributions/normal'
import { nestedSpread } from '@/shared/statistics/components/nested-spread'
import { mean } from '@/shared/statistics/sample-moments'
import { oneSidedFactorFrom } from '@/shared/statistics/tolerance/one-sided-factor'
import type { ToleranceBasis, ToleranceContent } from '@/shared/statistics/tolerance/tolerance-content'
import { twoSidedFactorFrom } from '@/shared/statistics/tolerance/two-sided-factor'
import { memoByText, memory } from '@/shared/memo'

/** Readings by specimen: those on one specimen are alike, so the specimen is the unit. */
export type BySpecimen = readonly (readonly number[])[]

/** What readings show of a share of the population against one limit. */
export interface ToleranceShown {
  readonly readings: number
  readonly specimens: number
  readonly mean: number
  /** Of a single reading, between specimens and on them; NaN for a single specimen. */
  readonly standardDeviation: number
  readonly basis: ToleranceBasis | undefined
  /** Undefined for a single specimen, which says nothing of others. */
  readonly factor: number | undefined
  readonly bound: number | undefined
  /**
   * `shown`: the share lies inside with the confidence asked. `too few`: the
   * specimens would do, were there more of them. `outside`: even endless specimens
   * with this mean and spread would not do.
   */
  readonly outcome: 'shown' | 'too few' | 'outside'
  /** With the same mean and spread, this many specimens would show it. */
  readonly enough: number | undefined
}

export interface ToleranceLimit {
  readonly value: number
  readonly side: 'lower' | 'upper'
  /** The window has another limit on the other side: the share must lie between both. */
  readonly ofTwo?: boolean
}

/** More specimens than anyone takes: beyond them "more specimens" is no advice. */
const MAX_SPECIMENS = 10_000

/**
 * Judges readings of a normal population against one limit by a tolerance bound,
 * mean ∓ k·s; k is the two-sided factor where the window has two limits, so that
 * both bounds together hold the share. Units: those of the readings.
 * Throws RangeError without a specimen or for a coverage or confidence not strictly between 0 and 1.
 * Source: NIST/SEMATECH e-Handbook 7.2.6.3 (noncentral t; exact two-sided factor); readings in groups by `nestedSpread`.
 */
export const toleranceShown = (
  specimens: BySpecimen,
  limit: ToleranceLimit,
  content: ToleranceContent,
): ToleranceShown =>
  known(specimens, [limit.value, limit.side, limit.ofTwo, content.coverage, content.confidence], () =>
    computeShown(specimens, limit, content),
  )

const known = memory<BySpecimen, ToleranceShown>(4)

function computeShown(
  specimens: BySpecimen,
  limit: ToleranceLimit,
  content: ToleranceContent,
): ToleranceShown {
  const readings = specimens.reduce((sum, own) => sum + own.length, 0)
  if (specimens.length < 2) {
    const centre = mean(specimens.flat())
    const inside = limit.side === 'lower' ? centre >= limit.value : centre <= limit.value
    return {
      ...{ readings, specimens: specimens.length, mean: centre, standardDeviation: Number.NaN },
      ...{ basis: undefined, factor: undefined, bound: undefined, enough: undefined },
      outcome: inside ? 'too few' : 'outside',
    }
  }
  const basis = nestedSpread([specimens], content.confidence)
  const { mean: centre, standardDeviation } = basis
  const base = { readings, specimens: specimens.length, mean: centre, standardDeviation, basis }
  const factor = rememberedFactor(basis, limit, content)
  const bound =
    limit.side === 'lower' ? centre - factor * standardDeviation : centre + factor * standardDeviation
  const inside = limit.side === 'lower' ? bound >= limit.value : bound <= limit.value
  if (inside) return { ...base, factor, bound, outcome: 'shown', enough: specimens.length }
  const marginValue = limit.side === 'lower' ? centre - limit.value : limit.value - centre
  const enough = specimensEnough(marginValue / standardDeviation, base, limit, content)
  return { ...base, factor, bound, outcome: enough === undefined ? 'outside' : 'too few', enough }
}

/** The least number of specimens, made up like these, whose factor is at most so many standard deviations. */
function specimensEnough(
  marginInSpreads: number,
  { specimens, basis }: { readonly specimens: number; readonly basis: ToleranceBasis },
  limit: ToleranceLimit,
  content: ToleranceContent,
): number | undefined {
  const endless = limit.ofTwo ? (1 + content.coverage) / 2 : content.coverage
  if (!(marginInSpreads > normalQuantile(endless))) return undefined
  const isEnough = (count: number) =>
    rememberedFactor(scaled(basis, specimens, count), limit, content) <= marginInSpreads
  return minCountUpTo(isEnough, { min: specimens + 1, guess: specimens * 2, max: MAX_SPECIMENS })
}

/** What as many units would be worth, were they made up like these. */
export const scaled = (
  { effectiveReadings, degreesOfFreedom }: ToleranceBasis,
  from: number,
  to: number,
): ToleranceBasis => ({
  effectiveReadings: (effectiveReadings * to) / from,
  degreesOfFreedom: (degreesOfFreedom * (to - 1)) / (from - 1),
})

/** The factor costs a fifth of a millisecond and is asked for again and again. */
const rememberedFactor = memoByText(
  5000,
  (
    { effectiveReadings, degreesOfFreedom }: ToleranceBasis,
    { ofTwo }: Pick<ToleranceLimit, 'ofTwo'>,
    { coverage, confidence }: ToleranceContent,
  ) => `${effectiveReadings} ${degreesOfFreedom} ${ofTwo} ${coverage} ${confidence}`,
  (basis, { ofTwo }, content) =>
    ofTwo ? twoSidedFactorFrom(basis, content) : oneSidedFactorFrom(basis, content),
)
