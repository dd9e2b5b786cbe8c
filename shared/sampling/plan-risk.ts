import {
  acceptanceOfProcess,
  fractionAtAcceptance,
} from '@/shared/statistics/sampling/attribute-operating-curve'
import { doublePlanPerformance } from '@/shared/statistics/sampling/double-operating-curve'
import {
  doubleOutgoingFraction,
  outgoingQuality,
  variablesOutgoingFraction,
} from '@/shared/statistics/sampling/outgoing-quality'
import { acceptanceByVariables } from '@/shared/statistics/sampling/variables-plan'
import { formatQuantity } from '@/shared/quantity/format'
import type { SamplingPlan } from './sampling-plan'
import { memoByText } from '@/shared/memo'

/** What a plan does on average, as fractions bad. */
export interface PlanRisk {
  /** So good a process is accepted nineteen times in twenty: the producer's side. */
  readonly mostlyAccepted: number
  /** So bad a process still passes one time in ten: the consumer's side. */
  readonly oneInTen: number
}

/** The chance that a plan accepts a process with this fraction bad. Fractions; RangeError outside 0 to 1. */
export function acceptanceUnder(plan: SamplingPlan, fractionNonconforming: number): number {
  switch (plan.kind) {
    case 'double':
      return doublePlanPerformance(plan, fractionNonconforming).acceptance
    case 'variables':
      return acceptanceByVariables(plan, fractionNonconforming)
    // A count in the gap of a reduced plan accepts the lot.
    case 'single':
      return acceptanceOfProcess(
        { sampleSize: plan.sampleSize, accept: maxAccepted(plan) },
        fractionNonconforming,
      )
    case 'zero-acceptance':
      return acceptanceOfProcess(plan, fractionNonconforming)
  }
}

/** The operating curve as points, for drawing and for its table. */
export const operatingCurve = (
  plan: SamplingPlan,
  fractionsNonconforming: readonly number[],
): readonly { readonly fractionNonconforming: number; readonly acceptance: number }[] =>
  fractionsNonconforming.map((fractionNonconforming) => ({
    fractionNonconforming,
    acceptance: acceptanceUnder(plan, fractionNonconforming),
  }))

/** The average fraction bad that leaves, where rejected lots are inspected whole and every bad piece replaced. */
export function outgoingUnder(plan: SamplingPlan, lotSize: number, fractionNonconforming: number): number {
  switch (plan.kind) {
    case 'double':
      return doubleOutgoingFraction(plan, lotSize, fractionNonconforming)
    case 'variables':
      return variablesOutgoingFraction(plan, lotSize, fractionNonconforming)
    case 'single':
    case 'zero-acceptance': {
      const accept = plan.kind === 'single' ? maxAccepted(plan) : 0
      return outgoingQuality({ sampleSize: plan.sampleSize, accept }, lotSize, fractionNonconforming)
        .averageOutgoing
    }
  }
}

/** Average outgoing quality along fractions coming in, for drawing and for its table. */
export const outgoingCurve = (
  plan: SamplingPlan,
  lotSize: number,
  fractionsNonconforming: readonly number[],
): readonly { readonly fractionNonconforming: number; readonly outgoing: number }[] =>
  fractionsNonconforming.map((fractionNonconforming) => ({
    fractionNonconforming,
    outgoing: outgoingUnder(plan, lotSize, fractionNonconforming),
  }))

/** The worst that leaves on average, and what comes in when it does: the highest point of the curve, to a thousandth. */
export function outgoingLimit(
  plan: SamplingPlan,
  lotSize: number,
): { readonly fractionNonconforming: number; readonly outgoing: number } {
  const max = Math.min(1, planRisk(plan).oneInTen * 1.8)
  const steps = Array.from({ length: 1001 }, (_, step) => (max * step) / 1000)
  return outgoingCurve(plan, lotSize, steps).reduce((worst, one) =>
    one.outgoing > worst.outgoing ? one : worst,
  )
}

/** How many pieces are looked at on average before the plan decides, at this fraction bad. */
export const averageSample = (plan: SamplingPlan, fractionNonconforming: number): number =>
  plan.kind === 'double' ? doublePlanPerformance(plan, fractionNonconforming).averageSample : plan.sampleSize

/** Both ends of the operating curve. Source: its definition, MIL-STD-105E tables X. */
export const planRisk = (plan: SamplingPlan): PlanRisk => ({
  mostlyAccepted: fractionAccepted(plan, 0.95),
  oneInTen: fractionAccepted(plan, 0.1),
})

/** "A process with 0.39 % bad passes nineteen times in twenty, one with 16.2 % still one time in ten." */
export function riskInWords(plan: SamplingPlan): string {
  const { mostlyAccepted, oneInTen } = planRisk(plan)
  const percent = (fraction: number) => formatQuantity(fraction * 100, '%', 3)
  return `A process with ${percent(mostlyAccepted)} nonconforming passes nineteen times in twenty, one with ${percent(oneInTen)} still one time in ten.`
}

/** The fraction bad that a plan accepts with this probability; plans are asked about again and again. */
const fractionAccepted = memoByText(
  2000,
  (plan: SamplingPlan, acceptance: number) => `${numbersOf(plan)} ${acceptance}`,
  (plan, acceptance) => findFraction(plan, acceptance),
)

function findFraction(plan: SamplingPlan, acceptance: number): number {
  if (plan.kind === 'single' || plan.kind === 'zero-acceptance') {
    const accept = plan.kind === 'single' ? maxAccepted(plan) : 0
    if (accept >= plan.sampleSize) return 1
    return fractionAtAcceptance({ sampleSize: plan.sampleSize, accept }, acceptance)
  }
  let good = 0
  let nonconforming = 1
  for (let step = 0; step < 50; step++) {
    const middle = (good + nonconforming) / 2
    if (acceptanceUnder(plan, middle) > acceptance) good = middle
    else nonconforming = middle
  }
  return (good + nonconforming) / 2
}

const maxAccepted = ({ reject, sampleSize }: Extract<SamplingPlan, { kind: 'single' }>): number =>
  Math.min(reject - 1, sampleSize)

/** What a plan's operating curve follows from. */
const numbersOf = (plan: SamplingPlan): string => {
  switch (plan.kind) {
    case 'single':
    case 'zero-acceptance':
      return `${plan.sampleSize}/${plan.reject}`
    case 'double':
      return `${plan.firstSize}/${plan.firstAccept}/${plan.firstReject}/${plan.secondSize}/${plan.secondReject}`
    case 'variables':
      return `${plan.sampleSize} k ${plan.acceptabilityConstant}`
  }
}
