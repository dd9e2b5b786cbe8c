import { requireNotNegative } from '@/shared/statistics/argument-checks'

export type ParetoRow = {
  kind: string
  amount: number
  /** Of the whole, 0 to 1. */
  share: number
  /** Of this and all larger ones. */
  cumulativeShare: number
}

/**
 * Kinds by falling amount (a count, a cost), with their running share; equal
 * amounts in the order of their names, so that the order never depends on the
 * input's. Nothing at all gives no rows.
 */
export function paretoOrder(amounts: ReadonlyMap<string, number>): ParetoRow[] {
  const kinds = [...amounts]
  kinds.forEach(([kind, amount]) => requireNotNegative(amount, `amount of “${kind}”`))
  const total = kinds.reduce((sum, [, amount]) => sum + amount, 0)
  if (total === 0) return []
  let running = 0
  return kinds
    .sort(([kind, amount], [other, otherAmount]) => otherAmount - amount || (kind < other ? -1 : 1))
    .map(([kind, amount]) => {
      running += amount
      return { kind, amount, share: amount / total, cumulativeShare: running / total }
    })
}

/** The fewest leading kinds that make up at least this share of the whole, e.g. 0.8. */
export function leadingKinds(rows: readonly ParetoRow[], share: number): ParetoRow[] {
  const last = rows.findIndex((row) => row.cumulativeShare >= share - 1e-12)
  return rows.slice(0, last < 0 ? rows.length : last + 1)
}
