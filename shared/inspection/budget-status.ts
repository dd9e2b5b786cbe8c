import { roundingTolerance } from '@/shared/quantity/rounding-tolerance'
import { defectsPerMillionJoints } from '@/shared/statistics/intervals/defects-per-million'
import {
  eventsExpectedToShow,
  sequentialRateLowerBound,
  sequentialRateUpperBound,
} from '@/shared/statistics/intervals/sequential-rate'
import type { DefectRecord } from './defect-record'

const MILLION = 1e6

/** What the inspections show of the defect budget. */
export interface BudgetStatus {
  readonly budgetPerMillion: number
  readonly perMillion: number
  /** One-sided, at the confidence asked for, and holding at every look: boards are counted as they come. */
  readonly upper: number
  readonly lower: number
  readonly status: 'shown' | 'not shown' | 'exceeded'
  /** With no further defect; 0 when shown. */
  readonly jointsStillToSee: number
}

/**
 * Holds a defect record against a budget: shown, exceeded, or how many more
 * joints must be seen. Boards are looked at one after another and the budget
 * with each, so the bounds are those of a confidence sequence.
 */
export function budgetStatus(
  record: Pick<DefectRecord, 'defective' | 'jointsSeen'>,
  budgetPerMillion: number,
  confidence: number,
): BudgetStatus {
  const { defective, jointsSeen } = record
  const seen = { events: defective, exposure: jointsSeen / MILLION }
  const upper = Math.min(MILLION, sequentialRateUpperBound(seen, confidence))
  const lower = sequentialRateLowerBound(seen, confidence)
  const shown = upper - budgetPerMillion <= roundingTolerance(upper, budgetPerMillion)
  const status = shown ? 'shown' : lower > budgetPerMillion ? 'exceeded' : 'not shown'
  return {
    budgetPerMillion,
    perMillion: defectsPerMillionJoints({ defectiveJoints: defective, jointsSeen }),
    upper,
    lower,
    status,
    jointsStillToSee: shown ? 0 : jointsToSee(defective, budgetPerMillion, confidence) - jointsSeen,
  }
}

/** Joints to see in all, with no further defect; a hair off a whole number is binary rounding error. */
const jointsToSee = (defective: number, budgetPerMillion: number, confidence: number): number =>
  Math.ceil(((eventsExpectedToShow(defective, confidence) * MILLION) / budgetPerMillion) * (1 - 1e-12))
