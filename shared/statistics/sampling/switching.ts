import type { LotOutcome, Severity } from './single-plan'
import { MIL_STD_105E, type SwitchingRules } from './switching-rules'

/** What a series of lots has gone through, oldest first. */
export type SeriesEvent = InspectedLot | { kind: 'corrective action accepted' }

export interface InspectedLot {
  kind: 'lot'
  outcome: LotOutcome
  /** A lot offered again after rejection: it does not count for switching. */
  resubmitted?: boolean
  /**
   * Production is steady, the total of defectives is within the limit number (MIL-STD-105E table
   * VIII, which this module does not hold), and reduced inspection is wanted. Not so unless said.
   */
  mayReduce?: boolean
  /** Production was irregular or delayed, or something else calls for normal inspection. */
  irregular?: boolean
  /** For the switching score: the acceptance number of the plan used. */
  acceptanceNumber?: number
  /** For the switching score: the lot would also have passed at the next tighter limit. */
  passesOneStepTighter?: boolean
  /** For the switching score, of a double plan alone: whether the first sample accepted the lot. */
  acceptedOnFirst?: boolean
}

/** How the next lot of the series is to be inspected, and why. */
export interface InspectionStatus {
  severity: Severity | 'discontinued'
  reason: SwitchingReason
  /** The reason in a sentence. */
  because: string
  /** Outcomes of the counted lots since this severity began, oldest first: true where accepted. */
  accepted: readonly boolean[]
  switchingScore: number
}

const REASONS = {
  start: 'A series starts on normal inspection.',
  'supplier acted': 'The supplier has acted: inspection resumes tightened.',
  'two of five rejected': 'Two of the last five lots or fewer were rejected.',
  'ten accepted': 'Ten lots in a row were accepted, and the other conditions hold.',
  'score of thirty': 'The switching score reached 30, and the other conditions hold.',
  'five accepted on tightened': 'Five lots in a row were accepted on tightened inspection.',
  'ten on tightened': 'Ten lots in a row stayed on tightened inspection.',
  'five rejected on tightened': 'Five lots were rejected on tightened inspection.',
  'rejected on reduced': 'A lot was rejected on reduced inspection.',
  'in the gap on reduced': 'A lot fell between the acceptance and rejection numbers on reduced inspection.',
  irregular: 'Production became irregular.',
} as const
export type SwitchingReason = keyof typeof REASONS

const FIRST_STANDING = begin('normal', 'start')

/**
 * How the next lot is to be inspected after this history.
 *
 * Source: the rules given; MIL-STD-105E 4.7 and 4.8 unless told otherwise.
 */
export function inspectionAfter(
  history: readonly SeriesEvent[],
  rules: SwitchingRules = MIL_STD_105E,
): InspectionStatus {
  return history.reduce((status, event) => nextInspection(status, event, rules), FIRST_STANDING)
}

/** One step of the series. */
export function nextInspection(
  status: InspectionStatus,
  event: SeriesEvent,
  rules: SwitchingRules,
): InspectionStatus {
  if (event.kind === 'corrective action accepted') {
    if (status.severity !== 'discontinued') return status
    return begin('tightened', 'supplier acted')
  }
  if (event.resubmitted || status.severity === 'discontinued') return status
  const counted = countLot(status, event)
  if (counted.severity === 'normal') return afterNormal(counted, event, rules)
  if (counted.severity === 'tightened') return afterTightened(counted, rules)
  return afterReduced(counted, event)
}

function begin(severity: InspectionStatus['severity'], reason: SwitchingReason): InspectionStatus {
  return { severity, reason, because: REASONS[reason], accepted: [], switchingScore: 0 }
}

function countLot(status: InspectionStatus, lot: InspectedLot): InspectionStatus {
  return {
    ...status,
    accepted: [...status.accepted, lot.outcome !== 'rejected'],
    switchingScore: scoreAfter(status.switchingScore, lot),
  }
}

/**
 * Single plans earn 2, or 3 from acceptance number 2 on where one step tighter would do; double plans
 * earn 3 on the first sample, whatever their acceptance number. Anything else sets back to zero.
 * Source: ISO 2859-1:1999, 9.3.3.2 (from memory).
 */
function scoreAfter(score: number, lot: InspectedLot): number {
  if (lot.acceptedOnFirst !== undefined) return lot.acceptedOnFirst ? score + 3 : 0
  if ((lot.acceptanceNumber ?? 0) >= 2) return lot.passesOneStepTighter ? score + 3 : 0
  return lot.outcome === 'accepted' ? score + 2 : 0
}

function afterNormal(status: InspectionStatus, lot: InspectedLot, rules: SwitchingRules): InspectionStatus {
  if (rejections(status.accepted.slice(-5)) >= 2) {
    return begin('tightened', 'two of five rejected')
  }
  const earned =
    rules.reducedAfter === 'ten lots accepted'
      ? status.accepted.length >= 10 && rejections(status.accepted.slice(-10)) === 0
      : status.switchingScore >= 30
  if (!earned || !lot.mayReduce || lot.irregular) return status
  return begin('reduced', rules.reducedAfter === 'ten lots accepted' ? 'ten accepted' : 'score of thirty')
}

function afterTightened(status: InspectionStatus, rules: SwitchingRules): InspectionStatus {
  const lastFive = status.accepted.slice(-5)
  if (lastFive.length === 5 && rejections(lastFive) === 0) {
    return begin('normal', 'five accepted on tightened')
  }
  if (rules.discontinuedAfter === 'ten lots on tightened' && status.accepted.length >= 10) {
    return begin('discontinued', 'ten on tightened')
  }
  if (rules.discontinuedAfter === 'five lots rejected on tightened' && rejections(status.accepted) >= 5) {
    return begin('discontinued', 'five rejected on tightened')
  }
  return status
}

function afterReduced(status: InspectionStatus, lot: InspectedLot): InspectionStatus {
  if (lot.outcome === 'rejected') return begin('normal', 'rejected on reduced')
  if (lot.outcome === 'accepted in the gap') {
    return begin('normal', 'in the gap on reduced')
  }
  if (lot.irregular) return begin('normal', 'irregular')
  return status
}

const rejections = (accepted: readonly boolean[]): number => accepted.filter((yes) => !yes).length
