import { chartConstants } from '@/shared/statistics/charts/constants'
import { requireEqualRows, requireReadings } from '@/shared/statistics/reading-checks'
import { mean, range, standardDeviation, sumOfSquaredDeviations } from '@/shared/statistics/sample-moments'

/** How the short-term standard deviation was found. */
export type SigmaMethod = 'pooled' | 'mean-range' | 'mean-deviation' | 'moving-range' | 'overall'

/**
 * A standard deviation with its worth: the degrees of freedom that give the
 * same sampling error, since ranges waste part of what the readings know.
 */
export type SigmaEstimate = { sigma: number; degreesOfFreedom: number; method: SigmaMethod }

type Subgroups = readonly (readonly number[])[]

/** Root of the pooled variance within subgroups, which may differ in size. Exact degrees of freedom. */
export function pooledSigma(subgroups: Subgroups): SigmaEstimate {
  let squares = 0
  let degreesOfFreedom = 0
  for (const subgroup of subgroups) {
    requireReadings(subgroup, 'readings in a subgroup')
    squares += sumOfSquaredDeviations(subgroup)
    degreesOfFreedom += subgroup.length - 1
  }
  if (degreesOfFreedom === 0) throw new RangeError('Spread needs a subgroup of two readings or more.')
  return { sigma: Math.sqrt(squares / degreesOfFreedom), degreesOfFreedom, method: 'pooled' }
}

/** Mean range ÷ d2, for subgroups of one size from 2 to 25. Degrees of freedom k·d2² ÷ 2d3². */
export function sigmaFromRanges(subgroups: Subgroups): SigmaEstimate {
  requireEqualRows(subgroups, 'subgroups', 2)
  const { d2, d3 } = chartConstants(subgroups[0]!.length)
  return {
    sigma: mean(subgroups.map(range)) / d2,
    degreesOfFreedom: equivalentDegrees(d3 ** 2 / (subgroups.length * d2 ** 2)),
    method: 'mean-range',
  }
}

/** Mean standard deviation ÷ c4, for subgroups of one size from 2 to 25. */
export function sigmaFromDeviations(subgroups: Subgroups): SigmaEstimate {
  requireEqualRows(subgroups, 'subgroups', 2)
  const { c4 } = chartConstants(subgroups[0]!.length)
  return {
    sigma: mean(subgroups.map((subgroup) => standardDeviation(subgroup))) / c4,
    degreesOfFreedom: equivalentDegrees((1 - c4 ** 2) / (subgroups.length * c4 ** 2)),
    method: 'mean-deviation',
  }
}

/**
 * Mean moving range ÷ d2, for single readings in order. Neighbouring ranges
 * share a reading, which costs degrees of freedom: their relative covariance is
 * r = π/12 + √3/2 − 1, from the absolute moment of two normal deviates
 * correlated by −½, so that m ranges give (π/2 − 1 + 2r)/m − 2r/m².
 */
export function sigmaFromMovingRange(values: readonly number[]): SigmaEstimate {
  requireReadings(values, 'readings', 2)
  const ranges = values.slice(1).map((value, index) => Math.abs(value - values[index]!))
  const shared = Math.PI / 12 + Math.sqrt(3) / 2 - 1
  const relativeVariance = (Math.PI / 2 - 1 + 2 * shared) / ranges.length - (2 * shared) / ranges.length ** 2
  return {
    sigma: mean(ranges) / chartConstants(2).d2,
    degreesOfFreedom: equivalentDegrees(relativeVariance),
    method: 'moving-range',
  }
}

/** Standard deviation of all readings together: the long-term spread of Pp and Ppk. */
export function overallSigma(values: readonly number[]): SigmaEstimate {
  return { sigma: standardDeviation(values), degreesOfFreedom: values.length - 1, method: 'overall' }
}

/** A standard deviation on ν degrees of freedom has relative variance near 1/(2ν). */
const equivalentDegrees = (relativeVariance: number): number => 1 / (2 * relativeVariance)
