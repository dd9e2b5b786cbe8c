import { COST_CLASSES } from '@/shared/records/kinds/quality-cost'
import type { RecordOf } from '@/shared/records/record-kinds'
import { paretoOrder, type ParetoRow } from '@/shared/statistics/comparison/pareto'
import { exactly, type Amount } from './amount'
import { rollUpCosts, type CostRollUp } from './quality-cost'

export type CostClass = (typeof COST_CLASSES)[number]['value']

/** Everything that a programme spent on quality, added up from its own records. */
export interface QualityCostSummary extends CostRollUp<CostClass> {
  /** All of it together: not known while any of it has no price. The total and the classes count what is priced. */
  readonly sum: Amount
  /** Rework whose hours have no price, and returns without a cost: how many of each. */
  readonly unpriced: { readonly rework: number; readonly returns: number }
  /** Failure found here and in service, share of the total. */
  readonly failureShare: number
  /** By the decision named behind each sum, dearest first. */
  readonly byDecision: readonly ParetoRow[]
  /** By defect: what rework cost, dearest first. */
  readonly reworkByDefect: readonly ParetoRow[]
  /** By month of spending, ascending. */
  readonly byMonth: readonly { readonly month: string; readonly amount: number }[]
}

const CLASSES = COST_CLASSES.map(({ value }) => value)

/**
 * Quality costs by class: the sums entered, rework priced by the hour with its
 * material (failure found here), and returns with a cost (failure in service).
 * One currency throughout; rework without a price for the hour and returns
 * without a cost are not known, and leave the sum unknown.
 */
export function qualityCostSummary(
  records: {
    readonly costs: readonly RecordOf<'quality-cost'>[]
    readonly rework: readonly RecordOf<'rework'>[]
    readonly returns: readonly RecordOf<'field-return'>[]
  },
  hourCost?: number,
): QualityCostSummary {
  const reworked = records.rework.map((row) => ({
    defect: row.defect,
    month: row.doneOn.slice(0, 7),
    amount: (row.minutes / 60) * (hourCost ?? 0) + (row.material ?? 0),
  }))
  const priced = records.returns.filter(({ cost }) => cost !== undefined)
  const unpriced = {
    rework: hourCost === undefined ? records.rework.filter(({ minutes }) => minutes > 0).length : 0,
    returns: records.returns.length - priced.length,
  }
  const lines: readonly {
    costClass: CostClass
    amount: number
    month: string
    decision: string | undefined
  }[] = [
    ...records.costs.map(({ costClass, amount, spentOn, decision }) => ({
      costClass,
      amount,
      month: spentOn.slice(0, 7),
      decision,
    })),
    ...reworked.map(({ amount, month }) => ({
      costClass: 'internal-failure' as const,
      amount,
      month,
      decision: undefined,
    })),
    ...priced.map(({ cost, returnedOn }) => ({
      costClass: 'external-failure' as const,
      amount: cost ?? 0,
      month: returnedOn.slice(0, 7),
      decision: undefined,
    })),
  ]
  const rolled = rollUpCosts(lines, CLASSES)
  const failure = rolled.byClass
    .filter(({ costClass }) => costClass === 'internal-failure' || costClass === 'external-failure')
    .reduce((sum, { amount }) => sum + amount, 0)
  const named = lines.flatMap(({ decision, amount }) => (decision ? [[decision, amount] as const] : []))
  return {
    ...rolled,
    sum: unpriced.rework + unpriced.returns > 0 ? 'unknown' : exactly(rolled.total),
    unpriced,
    failureShare: rolled.total === 0 ? 0 : failure / rolled.total,
    byDecision: paretoOrder(addedUp(named)),
    reworkByDefect: paretoOrder(addedUp(reworked.map(({ defect, amount }) => [defect, amount] as const))),
    byMonth: [...addedUp(lines.map(({ month, amount }) => [month, amount] as const))]
      .map(([month, amount]) => ({ month, amount }))
      .sort((a, b) => (a.month < b.month ? -1 : 1)),
  }
}

function addedUp(amounts: readonly (readonly [string, number])[]): ReadonlyMap<string, number> {
  const sums = new Map<string, number>()
  for (const [name, amount] of amounts) sums.set(name, (sums.get(name) ?? 0) + amount)
  return sums
}
