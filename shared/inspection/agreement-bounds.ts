import type { CohenKappa } from '@/shared/statistics/agreement/cohen-kappa'
import {
  exactProportionLowerBound,
  exactProportionUpperBound,
} from '@/shared/statistics/intervals/exact-proportion'
import type { Interval } from '@/shared/statistics/intervals/interval'
import { goodStillToSee } from './good-still-to-see'

/**
 * Bounds of kappa, one-sided each: the wider of the normal ones and of those
 * that the exact bounds of the share called differently give, chance agreement
 * kept as observed. The normal error reads nought where every call agreed and
 * is too small with a handful of disagreements. `found` holds its interval at
 * 2·confidence − 1. Errors: RangeError unless the confidence lies between 0 and 1.
 * Sources: Fleiss, Cohen and Everitt, Psychological Bulletin 72 (1969) 323;
 * Clopper and Pearson, Biometrika 26 (1934); the combination is this program's own.
 */
export function kappaBounds(
  { objects, observedAgreement, chanceAgreement, kappa, interval }: CohenKappa & { kappa: number },
  confidence: number,
): Interval {
  const seen = { found: differently(objects, observedAgreement), inspected: objects }
  const kappaAt = (share: number): number => 1 - share / (1 - chanceAgreement)
  const exact = {
    lower: kappaAt(exactProportionUpperBound(seen, confidence)),
    upper: kappaAt(exactProportionLowerBound(seen, confidence)),
  }
  return {
    lower: Math.max(-1, Math.min(exact.lower, interval?.lower ?? kappa)),
    upper: Math.min(1, Math.max(exact.upper, interval?.upper ?? kappa)),
  }
}

/** Joints still to be called, all of them alike and the set made up as it is, for the exact bound to reach a kappa. */
export function jointsStillToCall(
  { objects, observedAgreement, chanceAgreement }: CohenKappa,
  kappaMin: number,
  confidence: number,
): number | undefined {
  const alike = objects - differently(objects, observedAgreement)
  const share = 1 - (1 - kappaMin) * (1 - chanceAgreement)
  return goodStillToSee({ found: alike, inspected: objects }, share, confidence)
}

const differently = (objects: number, observedAgreement: number): number =>
  Math.round(objects * (1 - observedAgreement))
