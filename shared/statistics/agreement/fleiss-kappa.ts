import { requireCount } from '@/shared/statistics/argument-checks'

export type FleissKappa = {
  objects: number
  inspectors: number
  /** Mean share of pairs of inspectors that agree about an object. */
  observedAgreement: number
  chanceAgreement: number
  /** Share of pairs that agree, object by object: the low ones are those to look at together. */
  agreementByObject: readonly number[]
  /** Share of all calls in each category. */
  shareByCategory: readonly number[]
  /** Absent when only one category was ever used. */
  kappa?: number
  /** Of each category against all others; absent for one never or always used. */
  kappaByCategory: readonly (number | undefined)[]
  /**
   * Holds only if chance alone agrees: good for a test, not for an interval.
   * Fleiss, Nee and Landis 1979.
   */
  standardErrorIfChance?: number
}

/**
 * Agreement beyond chance of several inspectors, from the number of them that
 * put each object (row) in each category (column); every object judged by as
 * many. This is Fleiss’s kappa with pooled shares; Conger’s, which keeps each
 * inspector’s own shares, comes out a little higher. Source: J. L. Fleiss,
 * Psychological Bulletin 76 (1971) 378.
 */
export function fleissKappa(counts: readonly (readonly number[])[]): FleissKappa {
  const { objects, inspectors, categories } = requireCounts(counts)
  const pairs = inspectors * (inspectors - 1)
  const agreementByObject = counts.map((row) => row.reduce((sum, n) => sum + n * (n - 1), 0) / pairs)
  const shareByCategory = Array.from(
    { length: categories },
    (_, j) => counts.reduce((sum, row) => sum + row[j]!, 0) / (objects * inspectors),
  )
  const observedAgreement = agreementByObject.reduce((sum, share) => sum + share, 0) / objects
  const chanceAgreement = shareByCategory.reduce((sum, share) => sum + share ** 2, 0)
  const oneCategory = shareByCategory.some((share) => share === 1)
  return {
    objects,
    inspectors,
    observedAgreement,
    chanceAgreement,
    agreementByObject,
    shareByCategory,
    kappa: oneCategory ? undefined : (observedAgreement - chanceAgreement) / (1 - chanceAgreement),
    kappaByCategory: shareByCategory.map((share, j) => {
      if (share === 0 || share === 1) return undefined
      const split = counts.reduce((sum, row) => sum + row[j]! * (inspectors - row[j]!), 0)
      return 1 - split / (objects * pairs * share * (1 - share))
    }),
    standardErrorIfChance: oneCategory ? undefined : errorIfChance(shareByCategory, objects * pairs),
  }
}

function errorIfChance(shares: readonly number[], orderedPairs: number): number {
  const spread = shares.reduce((sum, p) => sum + p * (1 - p), 0)
  const skew = shares.reduce((sum, p) => sum + p * (1 - p) * (1 - 2 * p), 0)
  return (Math.SQRT2 * Math.sqrt(spread ** 2 - skew)) / (spread * Math.sqrt(orderedPairs))
}

function requireCounts(counts: readonly (readonly number[])[]): {
  objects: number
  inspectors: number
  categories: number
} {
  const first = counts[0]
  if (first === undefined || first.length < 2)
    throw new RangeError('Agreement needs an object and two categories at least.')
  const total = (row: readonly number[]): number => row.reduce((sum, n) => sum + n, 0)
  const inspectors = total(first)
  counts.forEach((row, index) => {
    row.forEach((n) => requireCount(n, `count of object ${index + 1}`))
    if (row.length !== first.length || total(row) !== inspectors)
      throw new RangeError(
        `Object ${index + 1} has ${total(row)} calls in ${row.length} categories; ` +
          `the first has ${inspectors} in ${first.length}.`,
      )
  })
  if (inspectors < 2) throw new RangeError('Agreement needs at least two inspectors.')
  return { objects: counts.length, inspectors, categories: first.length }
}
