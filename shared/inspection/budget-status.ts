import { binaryDust } from '@/shared/quantity/binary-dust'
import {
  defectsPerMillionJoints,
  defectsPerMillionLowerBound,
  defectsPerMillionUpperBound,
} from '@/shared/statistics/intervals/defects-per-million'
import { jointsStillToInspect } from '@/shared/statistics/intervals/joints-still-to-inspect'
import type { DefectRecord } from './defect-record'

/** What the inspections show of the defect budget. */
export interface BudgetStanding {
  readonly budgetPerMillion: number
  readonly perMillion: number
  /** One-sided, at the confidence asked for. */
  readonly upper: number
  readonly lower: number
  readonly standing: 'shown' | 'not shown' | 'exceeded'
  /** With no further defect; 0 when shown. */
  readonly jointsStillToSee: number
}

/** Holds a defect record against a budget: shown, exceeded, or how many more joints must be seen. */
export function budgetStanding(
  record: DefectRecord,
  budgetPerMillion: number,
  confidence: number,
): BudgetStanding {
  const seen = { defectiveJoints: record.defective, jointsSeen: record.jointsSeen }
  const upper = defectsPerMillionUpperBound(seen, confidence)
  const lower = defectsPerMillionLowerBound(seen, confidence)
  const shown = upper - budgetPerMillion <= binaryDust(upper, budgetPerMillion)
  const standing = shown ? 'shown' : lower > budgetPerMillion ? 'exceeded' : 'not shown'
  return {
    budgetPerMillion,
    perMillion: defectsPerMillionJoints(seen),
    upper,
    lower,
    standing,
    jointsStillToSee: standing === 'shown' ? 0 : jointsStillToInspect(seen, { budgetPerMillion, confidence }),
  }
}
