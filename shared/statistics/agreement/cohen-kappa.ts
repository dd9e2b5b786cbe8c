import { requireCount, requireOpenFraction } from '@/shared/statistics/argument-checks'
import { normalQuantile } from '@/shared/statistics/distributions/normal'
import type { Interval } from '@/shared/statistics/intervals/interval'

/** What a disagreement between categories i and j counts: all alike, or more the further apart they lie. */
export type DisagreementWeights = 'all-alike' | 'linear' | 'quadratic'

export type CohenKappa = {
  objects: number
  observedAgreement: number
  /** What two inspectors would agree by chance, each keeping to his own shares. */
  chanceAgreement: number
  /** Absent when chance alone agrees always: both used one and the same category. */
  kappa?: number
  standardError?: number
  /** Normal interval, cut at 1; absent as well when every call agreed, for then the error reads zero. */
  interval?: Interval
  /** For the test that only chance agrees. */
  standardErrorIfChance?: number
}

/**
 * Agreement of two inspectors beyond chance, from their table of calls. Kappa
 * is 1 for full agreement, 0 for chance, and depends on how common each category
 * is: show it with the table. Weights other than `all-alike` need categories in
 * order. Source: J. Cohen 1960; standard errors of Fleiss, Cohen and Everitt,
 * Psychological Bulletin 72 (1969) 323 (from memory).
 */
export function cohenKappa(
  table: readonly (readonly number[])[],
  confidence: number,
  weights: DisagreementWeights = 'all-alike',
): CohenKappa {
  requireOpenFraction(confidence, 'confidence')
  const objects = requireSquareTable(table)
  const size = table.length
  const share = table.map((row) => row.map((found) => found / objects))
  const ofFirst = share.map((row) => row.reduce((sum, p) => sum + p, 0))
  const ofSecond = share[0]!.map((_, j) => share.reduce((sum, row) => sum + row[j]!, 0))
  const weight = (i: number, j: number): number => agreementWeight(weights, i, j, size)
  const overCells = (term: (i: number, j: number) => number): number => {
    let sum = 0
    for (let i = 0; i < size; i++) for (let j = 0; j < size; j++) sum += term(i, j)
    return sum
  }
  const observed = overCells((i, j) => weight(i, j) * share[i]![j]!)
  const chance = overCells((i, j) => weight(i, j) * ofFirst[i]! * ofSecond[j]!)
  const result = { objects, observedAgreement: observed, chanceAgreement: chance }
  if (!(1 - chance > Number.EPSILON)) return result

  const kappa = (observed - chance) / (1 - chance)
  const rowWeight = ofFirst.map((_, i) => ofSecond.reduce((sum, p, j) => sum + p * weight(i, j), 0))
  const columnWeight = ofSecond.map((_, j) => ofFirst.reduce((sum, p, i) => sum + p * weight(i, j), 0))
  const error = (squares: number, centre: number): number =>
    Math.sqrt(Math.max(0, squares - centre ** 2) / objects) / (1 - chance)
  const standardError = error(
    overCells(
      (i, j) => share[i]![j]! * (weight(i, j) - (rowWeight[i]! + columnWeight[j]!) * (1 - kappa)) ** 2,
    ),
    kappa - chance * (1 - kappa),
  )
  const standardErrorIfChance = error(
    overCells((i, j) => ofFirst[i]! * ofSecond[j]! * (weight(i, j) - rowWeight[i]! - columnWeight[j]!) ** 2),
    chance,
  )
  const everyCallAgreed = overCells((i, j) => (i === j ? 0 : table[i]![j]!)) === 0
  const reach = normalQuantile((1 + confidence) / 2) * standardError
  return {
    ...result,
    kappa,
    standardError,
    standardErrorIfChance,
    interval: everyCallAgreed ? undefined : { lower: kappa - reach, upper: Math.min(1, kappa + reach) },
  }
}

function agreementWeight(weights: DisagreementWeights, i: number, j: number, size: number): number {
  if (weights === 'all-alike') return i === j ? 1 : 0
  const apart = Math.abs(i - j) / (size - 1)
  return 1 - (weights === 'linear' ? apart : apart ** 2)
}

function requireSquareTable(table: readonly (readonly number[])[]): number {
  if (table.length < 2) throw new RangeError('Agreement needs at least two categories.')
  let objects = 0
  table.forEach((row, i) => {
    if (row.length !== table.length)
      throw new RangeError(`The table has ${table.length} rows, but row ${i + 1} has ${row.length} cells.`)
    for (const found of row) {
      requireCount(found, `count in row ${i + 1}`)
      objects += found
    }
  })
  if (objects === 0) throw new RangeError('The table holds no calls.')
  return objects
}
