import { formatQuantity } from '@/shared/quantity/format'
import { acceptanceUnder, averageSample, outgoingLimit, planRisk } from '@/shared/sampling/plan-risk'
import { acceptanceNumber, pieces, type SamplingPlan } from '@/shared/sampling/sampling-plan'
import { whatTheSampleProves } from '@/shared/statistics/sampling/what-the-sample-proves'
import type { PlanQuestion } from './plan-question'

export const percent = (fraction: number): string => formatQuantity(fraction * 100, '%', 3)

/** Fractions nonconforming along which a plan's curves are drawn: from none to well past where it still passes one in ten. */
export function fractionsToDraw(plan: SamplingPlan): number[] {
  const max = Math.min(1, planRisk(plan).oneInTen * 1.8)
  return Array.from({ length: 81 }, (_, step) => (max * step) / 80)
}

/** The supplier's side: how often a process just at the acceptable quality level is sent back. */
export function producersRiskInWords(plan: SamplingPlan, { settings }: PlanQuestion): string {
  const acceptable = Number(settings.limit) / 100
  const risk = 1 - acceptanceUnder(plan, acceptable)
  const oneIn = Math.round(1 / risk)
  const often = risk >= 0.001 ? `, one lot in ${oneIn}` : ''
  return `A supplier whose process makes ${percent(acceptable)} nonconforming has ${percent(risk)} of the lots sent back${often}.`
}

/** The buyer's side: how poor a process may be and still pass. */
export function consumersRiskInWords(plan: SamplingPlan): string {
  const { oneInTen, mostlyAccepted } = planRisk(plan)
  return `A process with ${percent(oneInTen)} nonconforming still passes one time in ten; to pass nineteen times in twenty it must make at most ${percent(mostlyAccepted)} nonconforming.`
}

/** The average outgoing quality limit, and what has to happen for it to hold. */
export function outgoingInWords(plan: SamplingPlan, { lotSize }: PlanQuestion): string {
  const worst = outgoingLimit(plan, lotSize)
  if (worst.outgoing === 0) return 'Every piece is inspected: no nonconforming one leaves.'
  return `At worst ${percent(worst.outgoing)} on average, when ${percent(worst.fractionNonconforming)} come in – if rejected lots are inspected whole and every bad piece is replaced. A test that uses up its specimens cannot do that.`
}

/** What an acceptance shows of this very lot, with the confidence given. */
export function proofOfAcceptance(
  plan: SamplingPlan,
  { lotSize }: PlanQuestion,
  confidence: number,
): string | undefined {
  if (plan.kind === 'variables') return undefined
  const sampleSize = plan.kind === 'double' ? plan.firstSize + plan.secondSize : plan.sampleSize
  const defectives = Math.min(acceptanceNumber(plan), sampleSize)
  const { lotDefectivesAtMost, lotFractionAtMost } = whatTheSampleProves(
    { lotSize, sampleSize, defectives },
    confidence,
  )
  return `${sampleSize} ${pieces(sampleSize)} tested and ${defectives} nonconforming show, with ${percent(confidence)} confidence, that at most ${lotDefectivesAtMost} of the ${lotSize} are bad (${percent(lotFractionAtMost)}).`
}

/** How many pieces a double plan takes on average. */
export function averageSampleInWords(plan: SamplingPlan, { settings }: PlanQuestion): string | undefined {
  if (plan.kind !== 'double') return undefined
  const acceptable = Number(settings.limit) / 100
  return `${formatQuantity(averageSample(plan, acceptable), '1', 3)} pieces on average, at ${percent(acceptable)} nonconforming.`
}

/** When the plan is of another kind than was asked for. */
export function whyAnotherKind(plan: SamplingPlan, { settings }: PlanQuestion): string | undefined {
  if (plan.kind === settings.scheme) return undefined
  return settings.scheme === 'double'
    ? 'The tables have no double plan here, or the lot is too small for two samples: the single plan is used.'
    : 'The sample would be the whole lot, which needs no variables plan: the single plan is used.'
}
