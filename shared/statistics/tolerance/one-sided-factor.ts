import { noncentralTQuantile } from '../distributions/noncentral-t'
import { normalQuantile } from '../distributions/normal'
import { requireToleranceArguments, type ToleranceContent } from './tolerance-content'

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
  const root = Math.sqrt(readings)
  const noncentrality = normalQuantile(content.coverage) * root
  return noncentralTQuantile(content.confidence, { degreesOfFreedom: readings - 1, noncentrality }) / root
}
