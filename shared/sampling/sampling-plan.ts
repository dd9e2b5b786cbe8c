import type { AcceptanceQualityLimit } from '@/shared/statistics/sampling/acceptance-quality-limit'
import {
  codeLetterFor,
  type CodeLetter,
  type InspectionLevel,
} from '@/shared/statistics/sampling/code-letters'
import { doublePlan, judgeBothSamples, type DoublePlan } from '@/shared/statistics/sampling/double-plan'
import {
  judgeCount,
  singlePlan,
  type LotOutcome,
  type LotPlan,
  type Severity,
  type SinglePlan,
} from '@/shared/statistics/sampling/single-plan'
import { variablesPlan, type VariablesLimit } from '@/shared/statistics/sampling/variables-plan'
import { nextTighterFraction } from '@/shared/statistics/sampling/limiting-quality-steps'
import { zeroAcceptanceSampleFromLot } from '@/shared/statistics/sampling/zero-acceptance'
import { formatNumber } from '@/shared/quantity/format'
import type { Measured } from '@/shared/rules/finding'
import { variablesLetterFor } from '@/shared/statistics/sampling/variables-letters'
import { count } from '@/shared/rules/measure'

/** How a programme samples its lots. Fractions, not percent. */
export interface SamplingSettings {
  readonly scheme: 'single' | 'double' | 'zero-acceptance' | 'variables'
  readonly level: InspectionLevel
  /** One of the columns that attribute and variables tables share, 0.10 to 10. */
  readonly limit: AcceptanceQualityLimit & VariablesLimit
  /** Reduced inspection is wanted and production is steady. */
  readonly reducedWanted: boolean
  readonly zeroAcceptance: { readonly fraction: number; readonly confidence: number }
  /** A sample that a part states for itself, in pieces: none of it may be nonconforming, whatever scheme and level. */
  readonly statedSize?: number
}

/** The plan a lot is tested to. */
export type SamplingPlan =
  | ({ readonly kind: 'single'; readonly severity: Severity } & LotPlan)
  | ({ readonly kind: 'double'; readonly severity: Severity; readonly letter: CodeLetter } & DoublePlan)
  | {
      readonly kind: 'zero-acceptance'
      /** There is no reduced inspection without a defect to spare. */
      readonly severity: 'normal' | 'tightened'
      readonly sampleSize: number
      readonly accept: 0
      readonly reject: 1
      readonly everyUnit: boolean
      /** So many nonconforming pieces in the lot, or more, are found with the stated confidence. */
      readonly caught: number
      readonly confidence: number
      /** The part states the size of its sample; its history changes nothing of it. */
      readonly stated?: true
    }
  | {
      readonly kind: 'variables'
      readonly severity: 'normal' | 'tightened'
      readonly letter: string
      readonly sampleSize: number
      readonly acceptabilityConstant: number
      readonly everyUnit: boolean
    }

export type CountingPlan = Exclude<SamplingPlan, { readonly kind: 'variables' }>

/** What a sample has decided so far. */
export type SampleOutcome =
  { readonly decided: LotOutcome } | { readonly decided: undefined; readonly stillToTest: number }

/**
 * The plan for a lot of so many pieces. A double scheme falls back on the
 * single plan where the tables or the lot have no room for two samples; so
 * does a variables scheme unless `measured`: it needs a reading a piece.
 * Variables plans know no reduced inspection here: normal is used.
 * Throws RangeError for a lot that is not a whole number of at least one piece.
 * A zero-acceptance plan is tightened by the next smaller share of nonconforming pieces it must find.
 * Source: MIL-STD-105E 4.9 and tables I to III; a single piece is simply tested.
 */
export function planForLot(
  lotSize: number,
  severity: Severity,
  settings: SamplingSettings,
  { measured }: { measured: boolean } = { measured: false },
): SamplingPlan {
  if (settings.scheme === 'zero-acceptance' && settings.statedSize === undefined)
    return zeroAcceptancePlan(lotSize, severity === 'tightened' ? 'tightened' : 'normal', settings)
  if (settings.statedSize !== undefined) return statedPlan(lotSize, settings.statedSize, settings)
  const { level, limit } = settings
  if (lotSize === 1) {
    return { kind: 'single', severity, letter: 'A', sampleSize: 1, accept: 0, reject: 1, everyUnit: true }
  }
  if (settings.scheme === 'double') {
    const letter = codeLetterFor(lotSize, level)
    const plan = doublePlan(letter, limit, severity)
    if (plan && plan.firstSize + plan.secondSize < lotSize)
      return { kind: 'double', severity, letter, ...plan }
  }
  if (settings.scheme === 'variables' && measured) {
    const inUse = severity === 'tightened' ? 'tightened' : 'normal'
    const letter = variablesLetterFor(lotSize, level)
    const { sampleSize, acceptabilityConstant } = variablesPlan(letter, limit, inUse)
    const everyUnit = sampleSize >= lotSize
    if (!everyUnit) {
      return { kind: 'variables', severity: inUse, letter, sampleSize, acceptabilityConstant, everyUnit }
    }
  }
  const letter = codeLetterFor(lotSize, level)
  const plan = tabledPlan(letter, limit, severity)
  const everyUnit = plan.sampleSize >= lotSize
  return {
    kind: 'single',
    severity,
    letter,
    ...plan,
    sampleSize: Math.min(plan.sampleSize, lotSize),
    everyUnit,
  }
}

/** Table cells already read, by letter, limit and severity: the tables are printed text. */
const cells = new Map<string, SinglePlan>()
export function tabledPlan(
  letter: CodeLetter,
  limit: AcceptanceQualityLimit,
  severity: Severity,
): SinglePlan {
  const key = `${letter} ${limit} ${severity}`
  const plan = cells.get(key) ?? singlePlan(letter, limit, severity)
  cells.set(key, plan)
  return plan
}

function zeroAcceptancePlan(
  lotSize: number,
  severity: 'normal' | 'tightened',
  { zeroAcceptance }: SamplingSettings,
): SamplingPlan {
  const { confidence } = zeroAcceptance
  const fraction =
    severity === 'tightened' ? nextTighterFraction(zeroAcceptance.fraction) : zeroAcceptance.fraction
  const caught = Math.max(1, Math.ceil(fraction * lotSize - 1e-9))
  const sampleSize = zeroAcceptanceSampleFromLot(lotSize, caught, confidence)
  const everyUnit = sampleSize >= lotSize
  return {
    kind: 'zero-acceptance',
    severity,
    sampleSize,
    accept: 0,
    reject: 1,
    everyUnit,
    caught,
    confidence,
  }
}

/** A stated sample finds so many nonconforming pieces in the lot, or more, with the confidence asked of a zero-acceptance plan. */
function statedPlan(lotSize: number, size: number, { zeroAcceptance }: SamplingSettings): SamplingPlan {
  const { confidence } = zeroAcceptance
  const sampleSize = Math.min(size, lotSize)
  return {
    kind: 'zero-acceptance',
    severity: 'normal',
    sampleSize,
    accept: 0,
    reject: 1,
    everyUnit: sampleSize === lotSize,
    caught: leastCaught(lotSize, sampleSize, confidence),
    confidence,
    stated: true,
  }
}

/** The fewest nonconforming pieces in a lot of which such a sample surely enough holds one. */
function leastCaught(lotSize: number, sampleSize: number, confidence: number): number {
  let [few, many] = [1, lotSize]
  while (few < many) {
    const middle = Math.floor((few + many) / 2)
    if (zeroAcceptanceSampleFromLot(lotSize, middle, confidence) <= sampleSize) many = middle
    else few = middle + 1
  }
  return many
}

/**
 * What so many nonconforming pieces among so many tested mean under a plan that counts.
 * `badInFirst` are those among the first sample of a double plan: what that
 * sample decided, no further piece undoes. Where it is not known, both decide.
 */
export function outcomeOf(
  plan: CountingPlan,
  tested: number,
  nonconforming: number,
  nonconformingInFirst?: number,
): SampleOutcome {
  if (plan.kind === 'double')
    return doubleOutcome(
      plan,
      tested,
      nonconforming,
      tested <= plan.firstSize ? nonconforming : nonconformingInFirst,
    )
  if (nonconforming >= plan.reject) return { decided: 'rejected' }
  if (tested < plan.sampleSize) return { decided: undefined, stillToTest: plan.sampleSize - tested }
  return { decided: judgeCount(plan, nonconforming) }
}

function doubleOutcome(
  plan: DoublePlan,
  tested: number,
  nonconforming: number,
  nonconformingInFirst: number | undefined,
): SampleOutcome {
  if (nonconformingInFirst !== undefined && nonconformingInFirst >= plan.firstReject)
    return { decided: 'rejected' }
  if (tested < plan.firstSize) return { decided: undefined, stillToTest: plan.firstSize - tested }
  if (firstAccepts(plan, nonconformingInFirst ?? nonconforming)) return { decided: 'accepted' }
  if (nonconforming >= plan.secondReject) return { decided: 'rejected' }
  const both = plan.firstSize + plan.secondSize
  if (tested >= both) return { decided: judgeBothSamples(plan, nonconforming) }
  return { decided: undefined, stillToTest: both - tested }
}

/** Whether the first sample of a double plan accepts the lot by itself. */
export const firstAccepts = (
  { firstAccept }: DoublePlan,
  nonconformingInFirst: number | undefined,
): boolean => nonconformingInFirst !== undefined && nonconformingInFirst <= firstAccept

/** The most nonconforming pieces with which the plan accepts. */
export const acceptanceNumber = (plan: CountingPlan): number =>
  plan.kind === 'double' ? plan.secondAccept : plan.accept

/** From so many nonconforming pieces on, the plan rejects. */
export const rejectionNumber = (plan: CountingPlan): number =>
  plan.kind === 'double' ? plan.secondReject : plan.reject

/** What tells a plan from another, as data. */
export const planMeasured = (plan: SamplingPlan): Measured =>
  Object.fromEntries(
    Object.entries(plan).map(([name, value]: [string, number | string | boolean]) => [
      name,
      typeof value === 'number' ? count(value) : value,
    ]),
  )

/** The plan in words: "13 pieces, accept on 0, reject on 1 (letter E, normal inspection)". */
export function planInWords(plan: SamplingPlan): string {
  switch (plan.kind) {
    case 'single': {
      const all = plan.everyUnit ? ', the whole lot' : ''
      return `${plan.sampleSize} ${pieces(plan.sampleSize)}${all}, accept on ${plan.accept}, reject on ${plan.reject} (letter ${plan.letter}, ${plan.severity} inspection)`
    }
    case 'double':
      return `${plan.firstSize} pieces, accept on ${plan.firstAccept}, reject on ${plan.firstReject}; between them ${plan.secondSize} more, both together accept on ${plan.secondAccept}, reject on ${plan.secondReject} (letter ${plan.letter}, ${plan.severity} inspection)`
    case 'variables':
      return `${plan.sampleSize} pieces measured, the mean at least ${plan.acceptabilityConstant} standard deviations inside the limit (letter ${plan.letter}, ${plan.severity} inspection, s method)`
    case 'zero-acceptance': {
      const all = plan.everyUnit ? ', the whole lot' : ''
      return `${plan.sampleSize} ${pieces(plan.sampleSize)}${all}, none may be nonconforming (finds ${plan.caught} nonconforming ${pieces(plan.caught)} in the lot with ${formatNumber(plan.confidence * 100)} % confidence, ${plan.stated ? 'a sample stated for the part' : `${plan.severity} inspection`})`
    }
  }
}

export const pieces = (count: number): string => (count === 1 ? 'piece' : 'pieces')
