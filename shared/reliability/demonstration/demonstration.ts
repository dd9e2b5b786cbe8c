import { requireCount, requireOpenFraction, requirePositive } from '@/shared/statistics/argument-checks'
import { chiSquareQuantile } from '@/shared/statistics/distributions/chi-square'

export interface Demonstration {
  readonly confidence: number
  readonly failuresAllowed: number
}

/**
 * Test length as a multiple of the mean time to be shown, when the test ends at
 * a set time: χ²(confidence; 2r + 2) ÷ 2. Units: none.
 * Source: NIST/SEMATECH e-Handbook 8.3.1.1.
 */
export function testLengthFactor({ confidence, failuresAllowed }: Demonstration): number {
  requireOpenFraction(confidence, 'confidence')
  requireCount(failuresAllowed, 'number of failures allowed')
  return chiSquareQuantile(confidence, 2 * failuresAllowed + 2) / 2
}

/** Unit-hours (of all joints together) that show a failure rate, given in FIT, if no more than the allowed fail. */
export function unitHoursToShow(failureRateFit: number, demonstration: Demonstration): number {
  requirePositive(failureRateFit, 'failure rate to be shown')
  return (testLengthFactor(demonstration) / failureRateFit) * 1e9
}
