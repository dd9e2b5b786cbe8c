import {
  requireCount,
  requireCountWithin,
  requireNotNegative,
  requireOpenFraction,
  requireProbability,
} from '../argument-checks'
import { binomialCdf } from '../distributions/binomial'
import { hypergeometricCdf } from '../distributions/hypergeometric'
import { regularisedBetaQuantile } from '../distributions/incomplete-beta'
import { poissonCdf } from '../distributions/poisson'

/** What a single plan comes to: the sample and the most defectives it accepts. */
export interface AcceptancePlan {
  sampleSize: number
  accept: number
}

/**
 * Probability of accepting a lot drawn from a process with this fraction defective.
 *
 * Units: fractions. Errors: RangeError unless accept ≤ sample and the fraction lies in 0 … 1.
 * Source: binomial, MIL-STD-105E tables X for AQL up to 10 and samples up to 80.
 */
export function acceptanceOfProcess(plan: AcceptancePlan, fractionDefective: number): number {
  requirePlan(plan)
  requireProbability(fractionDefective, 'fraction defective')
  return binomialCdf(plan.accept, plan.sampleSize, fractionDefective)
}

/** Probability of accepting a lot of this size with so many defectives in it (hypergeometric). */
export function acceptanceOfLot(plan: AcceptancePlan, lotSize: number, defectivesInLot: number): number {
  requirePlan(plan)
  requireCountWithin(plan.sampleSize, 'sample size', lotSize, 'lot size')
  return hypergeometricCdf(plan.accept, {
    lotSize,
    defectives: defectivesInLot,
    sampleSize: plan.sampleSize,
  })
}

/** Probability of accepting at this mean number of defects per unit, which may exceed 1 (Poisson). */
export function acceptanceAtDefectsPerUnit(
  { sampleSize, accept }: AcceptancePlan,
  defectsPerUnit: number,
): number {
  requireCount(sampleSize, 'sample size', 1)
  requireNotNegative(defectsPerUnit, 'number of defects per unit')
  return poissonCdf(accept, sampleSize * defectsPerUnit)
}

/**
 * The fraction defective that the plan accepts with this probability: the operating curve read
 * the other way.
 *
 * Errors: RangeError unless the probability lies strictly between 0 and 1 and accept < sample.
 * Source: the incomplete beta identity, Abramowitz and Stegun 26.5.24.
 */
export function fractionAtAcceptance(plan: AcceptancePlan, acceptance: number): number {
  requirePlan(plan)
  requireOpenFraction(acceptance, 'probability of acceptance')
  if (plan.accept === plan.sampleSize)
    throw new RangeError('A plan that accepts every count has no such point.')
  return regularisedBetaQuantile(1 - acceptance, plan.accept + 1, plan.sampleSize - plan.accept)
}

/** Producer's risk: the probability that a lot at the quality agreed as acceptable is rejected. */
export function producersRisk(plan: AcceptancePlan, acceptableFraction: number): number {
  return 1 - acceptanceOfProcess(plan, acceptableFraction)
}

/** Consumer's risk: the probability that a lot at the quality held intolerable is accepted. */
export function consumersRisk(plan: AcceptancePlan, intolerableFraction: number): number {
  return acceptanceOfProcess(plan, intolerableFraction)
}

export function requirePlan({ sampleSize, accept }: AcceptancePlan): void {
  requireCount(sampleSize, 'sample size', 1)
  requireCountWithin(accept, 'acceptance number', sampleSize, 'sample size')
}
