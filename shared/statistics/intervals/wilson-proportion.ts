import { requireCount, requireCountWithin, requireOpenFraction } from '../argument-checks'
import { normalQuantile } from '../distributions/normal'
import type { Tally } from './exact-proportion'
import type { Interval } from './interval'

/**
 * Wilson's score interval for a proportion: the stated confidence on average rather than at least;
 * shorter than the exact one. For demonstrations use the exact bound.
 *
 * Units: fractions. Errors: as for the exact interval.
 * Source: Wilson, J. Am. Stat. Assoc. 22 (1927); NIST/SEMATECH e-Handbook 7.2.4.1.
 */
export function wilsonProportionInterval({ found, inspected }: Tally, confidence: number): Interval {
  requireCount(inspected, 'number inspected', 1)
  requireCountWithin(found, 'number found', inspected, 'number inspected')
  requireOpenFraction(confidence, 'confidence')
  const z = normalQuantile(1 - (1 - confidence) / 2)
  const share = found / inspected
  const weight = (z * z) / inspected
  const centre = (share + weight / 2) / (1 + weight)
  const halfWidth =
    (z / (1 + weight)) * Math.sqrt((share * (1 - share)) / inspected + weight / (4 * inspected))
  return {
    lower: found === 0 ? 0 : centre - halfWidth,
    upper: found === inspected ? 1 : centre + halfWidth,
  }
}
