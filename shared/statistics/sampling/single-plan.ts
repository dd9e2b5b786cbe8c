import { requireCount, requireOneOf } from '../argument-checks'
import type { AcceptanceQualityLimit } from './acceptance-quality-limit'
import { codeLetterFor, type CodeLetter, type InspectionLevel } from './code-letters'
import { readPlanTable } from './plan-table'
import { SINGLE_NORMAL, SINGLE_REDUCED, SINGLE_TIGHTENED } from './single-plan-tables'

export const SEVERITIES = ['normal', 'tightened', 'reduced'] as const
export type Severity = (typeof SEVERITIES)[number]

/** Accept the lot at up to `accept` defectives in the sample, reject it from `reject` on. */
export interface SinglePlan {
  sampleSize: number
  accept: number
  /** Above accept + 1 in reduced plans: what falls between accepts the lot and ends reduced inspection. */
  reject: number
}

/** A plan as it applies to one lot. */
export interface LotPlan extends SinglePlan {
  letter: CodeLetter
  /** The table's sample is as large as the lot or larger: every unit is inspected. */
  everyUnit: boolean
}

const TABLES = { normal: SINGLE_NORMAL, tightened: SINGLE_TIGHTENED, reduced: SINGLE_REDUCED }

/**
 * The single sampling plan for a code letter and acceptance quality limit, arrows followed.
 *
 * Units: units of product. Errors: RangeError for an unknown letter, limit or severity.
 * Source: MIL-STD-105E tables II-A, II-B, II-C; ISO 2859-1 tables 2-A, 2-B.
 */
export function singlePlan(
  letter: CodeLetter,
  limit: AcceptanceQualityLimit,
  severity: Severity,
): SinglePlan {
  requireOneOf(severity, 'severity of inspection', SEVERITIES)
  const { sampleSize, text } = readPlanTable(TABLES[severity], letter, limit)
  const [accept, reject] = text.split('/').map(Number)
  return { sampleSize, accept: accept!, reject: reject! }
}

/** What to look up for a lot. */
export interface LotSampling {
  lotSize: number
  level: InspectionLevel
  limit: AcceptanceQualityLimit
  severity: Severity
}

/**
 * The plan for a lot: code letter, then plan; the whole lot when the sample would not be smaller.
 *
 * Units: units of product. Errors: RangeError for a lot below 2.
 * Source: MIL-STD-105E 4.9 and note to table II: sample at least the lot, inspect every unit.
 */
export function singlePlanForLot({ lotSize, level, limit, severity }: LotSampling): LotPlan {
  const letter = codeLetterFor(lotSize, level)
  const plan = singlePlan(letter, limit, severity)
  const everyUnit = plan.sampleSize >= lotSize
  return { ...plan, sampleSize: Math.min(plan.sampleSize, lotSize), letter, everyUnit }
}

export type LotOutcome = 'accepted' | 'accepted in the gap' | 'rejected'

/**
 * What a count of defectives in the sample means for the lot.
 *
 * Errors: RangeError unless the count is whole and not below zero.
 * Source: MIL-STD-105E 4.7.4 and 4.10.1: a count in the gap of a reduced plan accepts the lot and
 * returns the series to normal inspection.
 */
export function judgeCount({ accept, reject }: SinglePlan, defectives: number): LotOutcome {
  requireCount(defectives, 'number of defectives found')
  if (defectives <= accept) return 'accepted'
  return defectives < reject ? 'accepted in the gap' : 'rejected'
}
