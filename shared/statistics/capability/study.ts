import type { Interval } from '@/shared/statistics/intervals/interval'
import { mean } from '@/shared/statistics/sample-moments'
import { capabilityIndices } from './indices'
import type { CapabilityIndices } from './indices'
import { cpInterval, cpkInterval, cpkLowerBound, cpmInterval } from './intervals'
import type { SpecificationLimits } from './specification-limits'
import { overallSigma } from './within-sigma'
import type { SigmaEstimate } from './within-sigma'

/** What the control chart said of the time in which the readings were taken. */
export type Stability = 'stable' | 'unstable' | 'not known'

export type IndicesWithBounds = CapabilityIndices & {
  sigma: SigmaEstimate
  cpInterval?: Interval
  cpkInterval: Interval
  /** One-sided at the same confidence: what the readings prove. */
  cpkLowerBound: number
  cpmInterval?: Interval
}

export type CapabilityStudy = {
  readings: number
  mean: number
  confidence: number
  stability: Stability
  /** By the spread within subgroups: Cp, Cpk. */
  shortTerm: IndicesWithBounds
  /** By the spread of all readings: Pp, Ppk. */
  longTerm: IndicesWithBounds
  /** Only a stable process promises tomorrow what it did today. */
  speaksForTheFuture: boolean
}

/**
 * Capability and performance of a process with their confidence bounds.
 * Intervals assume normal readings; those of the short-term indices use the
 * degrees of freedom that the estimate of sigma is worth. Units: limits,
 * readings and sigma alike. Errors: RangeError without spread or limits.
 */
export function capabilityStudy(study: {
  values: readonly number[]
  within: SigmaEstimate
  limits: SpecificationLimits
  stability: Stability
  confidence: number
}): CapabilityStudy {
  const { values, within, limits, stability, confidence } = study
  const centre = mean(values)
  const bounded = (sigma: SigmaEstimate): IndicesWithBounds =>
    withBounds(centre, sigma, limits, values.length, confidence)
  return {
    readings: values.length,
    mean: centre,
    confidence,
    stability,
    shortTerm: bounded(within),
    longTerm: bounded(overallSigma(values)),
    speaksForTheFuture: stability === 'stable',
  }
}

function withBounds(
  centre: number,
  estimate: SigmaEstimate,
  limits: SpecificationLimits,
  readings: number,
  confidence: number,
): IndicesWithBounds {
  const { sigma, degreesOfFreedom } = estimate
  const indices = capabilityIndices(limits, { mean: centre, sigma })
  const basis = { readings, degreesOfFreedom }
  const { cp, cpk, cpm } = indices
  return {
    ...indices,
    sigma: estimate,
    cpInterval: cp === undefined ? undefined : cpInterval(cp, basis, confidence),
    cpkInterval: cpkInterval(cpk, basis, confidence),
    cpkLowerBound: cpkLowerBound(cpk, basis, confidence),
    cpmInterval:
      cpm === undefined || limits.target === undefined
        ? undefined
        : cpmInterval(cpm, (centre - limits.target) / sigma, basis, confidence),
  }
}
