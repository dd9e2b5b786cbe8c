import { published } from '@/shared/sources/provenance'
import { requireOpenFraction, requirePositive } from '@/shared/statistics/argument-checks'
import { requireFinite } from '@/shared/statistics/reading-checks'
import type { ReliabilityModel } from './model'

export const ENGELMAIER: ReliabilityModel = {
  name: 'Engelmaier',
  edition: 'eutectic tin–lead',
  source: published(
    'W. Engelmaier, Solder joints in electronics: design for reliability, equations 3 to 5; IEEE Trans. CHMT-6 (1983)',
  ),
  caution:
    'Made for leadless surface-mounted joints. A compliant pin in a plated hole does not fit it, and ' +
    'no agreed constants exist for tin–silver–copper.',
}

/** Fatigue ductility of eutectic tin–lead; 0.65, often met, is twice this. */
const FATIGUE_DUCTILITY = 0.325

/**
 * Fatigue exponent c (negative) from the mean temperature of the solder over a
 * cycle, °C, and the dwell at each end, minutes.
 */
export function engelmaierExponent(meanSolderC: number, dwellMin: number): number {
  requireFinite(meanSolderC, 'mean solder temperature')
  requirePositive(dwellMin, 'dwell')
  return -0.442 - 6e-4 * meanSolderC + 1.74e-2 * Math.log(1 + 360 / dwellMin)
}

/** Cycles by which half the joints have failed, at a cyclic shear strain range (a plain ratio). */
export function medianCyclesToFailure(strainRange: number, exponent: number): number {
  requirePositive(strainRange, 'strain range')
  if (!(exponent < 0)) throw new RangeError(`The fatigue exponent must be negative; it is ${exponent}.`)
  return 0.5 * ((2 * FATIGUE_DUCTILITY) / strainRange) ** (-1 / exponent)
}

/**
 * Shear strain range of a leadless joint from the mismatch of expansion:
 * F · L/h · |Δα · ΔT|. Lengths in mm, expansions in ppm/K, swing in K; L is half
 * the diagonal between the outermost joints; F about 1 without a better figure.
 */
export function leadlessShearStrain(joint: {
  halfSpanMm: number
  heightMm: number
  expansionMismatchPpmPerK: number
  swingK: number
  correction?: number
}): number {
  requirePositive(joint.halfSpanMm, 'half span')
  requirePositive(joint.heightMm, 'height of the joint')
  requireFinite(joint.expansionMismatchPpmPerK, 'mismatch of expansion')
  requireFinite(joint.swingK, 'swing of temperature')
  const { correction = 1 } = joint
  requirePositive(correction, 'correction of the strain')
  const mismatch = Math.abs(joint.expansionMismatchPpmPerK * joint.swingK) * 1e-6
  return correction * (joint.halfSpanMm / joint.heightMm) * mismatch
}

/** Weibull shapes of the spread about the median: from memory of IPC-SM-785. */
export const SPREAD_SHAPES = { 'stiff leadless': 4, 'compliant lead': 2 } as const

/** Cycles by which a share of the joints has failed, from the median: N50 · [ln(1 − share) ÷ ln ½]^(1/shape). */
export function cyclesAtShareFailed(medianCycles: number, shareFailed: number, shape: number): number {
  requirePositive(medianCycles, 'median life')
  requireOpenFraction(shareFailed, 'share failed')
  requirePositive(shape, 'Weibull shape')
  return medianCycles * (Math.log1p(-shareFailed) / -Math.LN2) ** (1 / shape)
}
