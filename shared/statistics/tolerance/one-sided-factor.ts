import { noncentralTQuantile } from '../distributions/noncentral-t'
import { normalQuantile } from '../distributions/normal'
import {
  independent,
  requireToleranceArguments,
  requireToleranceBasis,
  type ToleranceBasis,
  type ToleranceContent,
} from './tolerance-content'

/**
 * Factor k for a one-sided tolerance bound of a normal population: mean ± k × standard deviation
 * has at least the wanted share of the population on its inner side. Exact.
 *
 * Units: none (multiples of the sample standard deviation). Errors: RangeError for fewer than two
 * readings, or a coverage or confidence not strictly between 0 and 1.
 * Source: NIST/SEMATECH e-Handbook 7.2.6.3, by the noncentral t distribution.
 */
export function oneSidedToleranceFactor(readings: number, content: ToleranceContent): number {
  requireToleranceArguments(readings, content)
  return oneSidedFactorFrom(independent(readings), content)
}

/** The same factor where mean and spread rest on readings in groups. */
export function oneSidedFactorFrom(basis: ToleranceBasis, content: ToleranceContent): number {
  requireToleranceBasis(basis, content)
  const { effectiveReadings, degreesOfFreedom } = basis
  const root = Math.sqrt(effectiveReadings)
  const noncentrality = normalQuantile(content.coverage) * root
  return noncentralTQuantile(content.confidence, { degreesOfFreedom, noncentrality }) / root
}
