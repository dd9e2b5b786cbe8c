import { requireCount, requireOneOf } from '../argument-checks'
import type { AcceptanceQualityLimit } from './acceptance-quality-limit'
import type { CodeLetter } from './code-letters'
import { DOUBLE_NORMAL, DOUBLE_REDUCED, DOUBLE_TIGHTENED } from './double-plan-tables'
import { lettersOf, readPlanTable } from './plan-table'
import { SEVERITIES, type LotOutcome, type Severity } from './single-plan'

/** A first sample that may decide by itself, and a second that decides together with it. */
export interface DoublePlan {
  firstSize: number
  firstAccept: number
  firstReject: number
  secondSize: number
  /** For both samples together. */
  secondAccept: number
  secondReject: number
}

const TABLES = { normal: DOUBLE_NORMAL, tightened: DOUBLE_TIGHTENED, reduced: DOUBLE_REDUCED }

/**
 * The double sampling plan for a code letter and acceptance quality limit, arrows followed;
 * undefined where the tables refer to the single plan.
 *
 * Units: units of product. Errors: RangeError for an unknown severity.
 * Source: MIL-STD-105E tables III-A, III-B, III-C (one transcription read).
 */
export function doublePlan(
  letter: CodeLetter,
  limit: AcceptanceQualityLimit,
  severity: Severity,
): DoublePlan | undefined {
  requireOneOf(severity, 'severity of inspection', SEVERITIES)
  const table = TABLES[severity]
  if (!lettersOf(table).includes(letter)) return undefined
  const { sampleSize, text } = readPlanTable(table, letter, limit)
  if (text === '*') return undefined
  const [firstAccept, firstReject, secondAccept, secondReject] = text.split(/[/,]/).map(Number)
  return {
    firstSize: sampleSize,
    firstAccept: firstAccept!,
    firstReject: firstReject!,
    secondSize: sampleSize,
    secondAccept: secondAccept!,
    secondReject: secondReject!,
  }
}

/**
 * What the first sample says: the lot's outcome, or that the second sample must be drawn.
 *
 * Errors: RangeError unless the count is whole and not below zero.
 */
export function judgeFirstSample(
  plan: DoublePlan,
  defectives: number,
): LotOutcome | 'draw the second sample' {
  requireCount(defectives, 'number of defectives in the first sample')
  if (defectives <= plan.firstAccept) return 'accepted'
  return defectives >= plan.firstReject ? 'rejected' : 'draw the second sample'
}

/** The lot's outcome by the defectives of both samples together. */
export function judgeBothSamples(plan: DoublePlan, defectives: number): LotOutcome {
  requireCount(defectives, 'number of defectives in both samples')
  if (defectives <= plan.secondAccept) return 'accepted'
  return defectives < plan.secondReject ? 'accepted in the gap' : 'rejected'
}
