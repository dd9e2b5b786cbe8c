import { requireCountWithin } from '../argument-checks'
import { binomialPmf } from '../distributions/binomial'
import { acceptanceOfProcess, requirePlan, type AcceptancePlan } from './attribute-operating-curve'

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
