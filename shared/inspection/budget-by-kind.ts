import { allowedDefectsPerMillion } from '@/shared/physics/joint-budget'
import { budgetStatus, type BudgetStatus } from './budget-status'
import type { DefectRecord } from './defect-record'
import { countsByKind, type KindRate } from './defect-summary'

/** A kind of defect, or all together, held against the whole budget. */
export interface HeldToBudget extends Pick<KindRate, 'joints' | 'perMillion' | 'interval'> {
  readonly kind: KindRate['kind'] | 'all kinds together'
  readonly status: BudgetStatus
  /** Of all joints counted under a kind. */
  readonly share: number
}

interface BudgetAsked {
  readonly jointsOnBoard: number
  /** Share of boards, between 0 and 1, that shall leave soldering without a defect. */
  readonly defectFreeBoards: number
  /** One-sided, for the status and for each of the bounds shown: the upper one is what the budget is held against. */
  readonly confidence: number
}

/**
 * All kinds together, then each, most frequent first: rate with bounds that hold at every look,
 * and whether it alone would keep the whole budget, exceed it, or need so many
 * more joints. Empty while no joint was seen or more are at fault than were seen.
 */
export function budgetByKind(record: DefectRecord, asked: BudgetAsked): HeldToBudget[] {
  const { jointsSeen, defective } = record
  if (jointsSeen === 0 || defective > jointsSeen) return []
  const { jointsOnBoard: joints, defectFreeBoards, confidence } = asked
  const budget = allowedDefectsPerMillion({ joints, defectFreeBoards })
  const statusOf = (count: number) => budgetStatus({ ...record, defective: count }, budget, confidence)
  const boundsOf = ({ lower, upper }: BudgetStatus) => ({ lower, upper })
  const whole = statusOf(defective)
  return [
    {
      kind: 'all kinds together',
      joints: defective,
      perMillion: whole.perMillion,
      interval: boundsOf(whole),
      share: 1,
      status: whole,
    },
    ...countsByKind(record).map(({ kind, joints: count, share }) => {
      const status = statusOf(count)
      return {
        kind,
        joints: count,
        perMillion: status.perMillion,
        interval: boundsOf(status),
        share,
        status,
      }
    }),
  ]
}
