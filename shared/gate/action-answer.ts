import type { AnsweredLine, CostPer } from '@/shared/cost/cost-line'

/** What a department answers: whether it can be done, what it costs and takes, and words. */
export interface ActionAnswer {
  readonly feasible: 'yes' | 'no' | 'with changes' | 'not asked'
  /** Empty where nothing was priced. */
  readonly amounts: readonly AnsweredLine[]
  readonly comment: string
}

/** An answer of an earlier version: one sum without saying what it is for, and a lead time. */
export interface FirstAnswer {
  readonly feasible: ActionAnswer['feasible']
  readonly amount: number | null
  readonly amountPer: CostPer | null
  readonly leadTimeDays: number | null
  readonly comment: string
}

/** An answer as it was stored, whichever version stored it. */
export function answerOf(stored: ActionAnswer | FirstAnswer): ActionAnswer {
  if ('amounts' in stored) return stored
  const { feasible, amount, amountPer, leadTimeDays, comment } = stored
  const of = { alternative: null }
  return {
    feasible,
    amounts: [
      ...(amount === null ? [] : [{ kind: 'other' as const, per: amountPer, amount, ...of }]),
      ...(leadTimeDays === null
        ? []
        : [{ kind: 'lead time' as const, per: null, amount: leadTimeDays, ...of }]),
    ],
    comment,
  }
}
