import { requireCountWithin } from '../argument-checks'
import { binomialCdf, binomialPmf } from '../distributions/binomial'
import { acceptanceOfProcess, requirePlan, type AcceptancePlan } from './attribute-operating-curve'
import { doublePlanPerformance } from './double-operating-curve'
import type { DoublePlan } from './double-plan'
import { acceptanceByVariables } from './variables-plan'

/** What leaves when rejected lots are inspected whole and every defective found is replaced. */
export interface OutgoingQuality {
  /** Average outgoing fraction defective. */
  averageOutgoing: number
  /** Average number of units inspected a lot. */
  averageInspected: number
}

/**
 * Outgoing quality under rectifying inspection.
 *
 * Units: fractions; units of product. Errors: RangeError unless accept ≤ sample ≤ lot and the
 * fraction lies in 0 … 1.
 * Source: definition, acceptance × fraction × (lot − sample) / lot; sample + (1 − acceptance) × rest.
 */
export function outgoingQuality(
  plan: AcceptancePlan,
  lotSize: number,
  fractionDefective: number,
): OutgoingQuality {
  requireCountWithin(plan.sampleSize, 'sample size', lotSize, 'lot size')
  const acceptance = acceptanceOfProcess(plan, fractionDefective)
  const rest = lotSize - plan.sampleSize
  return {
    averageOutgoing: (acceptance * fractionDefective * rest) / lotSize,
    averageInspected: plan.sampleSize + (1 - acceptance) * rest,
  }
}

/**
 * Average outgoing fraction defective of a double plan under rectifying inspection: what is
 * accepted on the first sample leaves unseen all but that sample, on the second all but both.
 *
 * Units: fractions; units of product. Errors: RangeError unless both samples fit the lot and the
 * fraction lies in 0 … 1.
 * Source: definition, fraction × (P first × (lot − first) + P second × (lot − first − second)) / lot.
 */
export function doubleOutgoingFraction(plan: DoublePlan, lotSize: number, fractionDefective: number): number {
  const { firstSize, firstAccept, secondSize } = plan
  requireCountWithin(firstSize + secondSize, 'size of both samples', lotSize, 'lot size')
  const { acceptance } = doublePlanPerformance(plan, fractionDefective)
  const onFirst =
    firstAccept < 0 ? 0 : binomialCdf(Math.min(firstAccept, firstSize), firstSize, fractionDefective)
  const unseen = onFirst * (lotSize - firstSize) + (acceptance - onFirst) * (lotSize - firstSize - secondSize)
  return (fractionDefective * unseen) / lotSize
}

/**
 * Average outgoing fraction defective of a variables plan (s method, normal readings) under
 * rectifying inspection. Errors as for the others. Source: definition.
 */
export function variablesOutgoingFraction(
  plan: { readonly sampleSize: number; readonly acceptabilityConstant: number },
  lotSize: number,
  fractionDefective: number,
): number {
  requireCountWithin(plan.sampleSize, 'sample size', lotSize, 'lot size')
  const acceptance = acceptanceByVariables(plan, fractionDefective)
  return (acceptance * fractionDefective * (lotSize - plan.sampleSize)) / lotSize
}

/** The worst that can leave, and the incoming quality at which it does. */
export interface OutgoingLimit {
  incomingFraction: number
  outgoingFraction: number
}

/**
 * The average outgoing quality limit, for lots much larger than the sample; for a lot of given
 * size multiply the outgoing fraction by 1 − sample / lot.
 *
 * The summit of p × acceptance(p), where p × sample × (probability of just the acceptance number in one
 * unit less) equals the acceptance; found by bisection, since that ratio rises with p.
 *
 * Errors: RangeError unless accept < sample.
 * Source: definition; the derivative of the binomial acceptance probability.
 */
export function outgoingQualityLimit(plan: AcceptancePlan): OutgoingLimit {
  requirePlan(plan)
  const { sampleSize, accept } = plan
  if (accept === sampleSize) throw new RangeError('A plan that accepts every count has no outgoing limit.')
  let low = 0
  let high = 1
  for (let step = 0; step < 60; step++) {
    const fraction = (low + high) / 2
    const loss = fraction * sampleSize * binomialPmf(accept, sampleSize - 1, fraction)
    if (loss < acceptanceOfProcess(plan, fraction)) low = fraction
    else high = fraction
  }
  const incomingFraction = (low + high) / 2
  return {
    incomingFraction,
    outgoingFraction: incomingFraction * acceptanceOfProcess(plan, incomingFraction),
  }
}
