import { requireOpenFraction } from '../argument-checks'

/**
 * The steps of limiting quality (LTPD) that plans without a defect to spare are ordered by, in percent bad.
 * Source: MIL-M-38510 and MIL-PRF-38535, LTPD sampling plans (from memory).
 */
export const LIMITING_QUALITY_STEPS_PCT = [
  ...[50, 30, 20, 15, 10, 7, 5, 3, 2, 1.5, 1],
  ...[0.7, 0.5, 0.3, 0.2, 0.15, 0.1],
] as const

/**
 * The next tighter step below a share of nonconforming pieces; two thirds of it below the last step.
 *
 * Units: fractions. Errors: RangeError unless it lies strictly between 0 and 1.
 * Source: MIL-M-38510, tightened inspection: the next lower LTPD of the table (from memory).
 */
export function nextTighterFraction(fraction: number): number {
  requireOpenFraction(fraction, 'share of nonconforming pieces')
  const next = LIMITING_QUALITY_STEPS_PCT.find((step) => step < fraction * 100 * (1 - 1e-9))
  return next === undefined ? (fraction * 2) / 3 : next / 100
}
