import { requireNotNegative } from '@/shared/statistics/argument-checks'

export interface CostLine<Class extends string> {
  readonly costClass: Class
  readonly amount: number
}

export interface CostRollUp<Class extends string> {
  readonly total: number
  /** Amount and share of the total by class, in the order asked for; shares are 0 when nothing was spent. */
  readonly byClass: readonly { readonly costClass: Class; readonly amount: number; readonly share: number }[]
}

/**
 * Sums of quality costs by class (prevention, appraisal, failure here, failure
 * in service), all in one currency. Source: the usual division of quality
 * costs, J. M. Juran (from memory).
 */
export function rollUpCosts<Class extends string>(
  lines: readonly CostLine<Class>[],
  classes: readonly Class[],
): CostRollUp<Class> {
  const amounts = new Map<Class, number>(classes.map((costClass) => [costClass, 0]))
  for (const { costClass, amount } of lines) {
    const before = amounts.get(costClass)
    if (before === undefined) throw new RangeError(`There is no class of cost called “${costClass}”.`)
    requireNotNegative(amount, `amount of a line in “${costClass}”`)
    amounts.set(costClass, before + amount)
  }
  const total = [...amounts.values()].reduce((sum, amount) => sum + amount, 0)
  return {
    total,
    byClass: [...amounts].map(([costClass, amount]) => ({
      costClass,
      amount,
      share: total === 0 ? 0 : amount / total,
    })),
  }
}
