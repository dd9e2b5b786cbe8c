import gammaln from '@stdlib/math-base-special-gammaln'
import { requirePositive } from '../argument-checks'

/**
 * Natural logarithm of the gamma function.
 *
 * Units: none. Errors: RangeError unless x is above zero.
 */
export function lnGamma(x: number): number {
  requirePositive(x, 'argument of the log-gamma function')
  return gammaln(x)
}
