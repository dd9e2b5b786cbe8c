import { requireCount, requireOpenFraction } from '@/shared/statistics/argument-checks'
import { normalQuantile } from '@/shared/statistics/distributions/normal'
import type { Interval } from '@/shared/statistics/intervals/interval'

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
  /** Over sets of joints like this one, for these inspectors; absent with fewer than two objects or no kappa. */
  standardError?: number
  /** Normal interval, cut at 1; absent as well when every call agreed, for then the error reads zero. */
  interval?: Interval
}

/**
 * Agreement beyond chance of several inspectors, from the number of them that
 * put each object (row) in each category (column); every object judged by as
 * many. This is Fleiss’s kappa with pooled shares; Conger’s, which keeps each
 * inspector’s own shares, comes out a little higher. Source: J. L. Fleiss,
 * Psychological Bulletin 76 (1971) 378; standard error by linearisation over the
 * objects, K. L. Gwet, Br. J. Math. Stat. Psychol. 61 (2008) 29 (from memory).
 */
export function fleissKappa(counts: readonly (readonly number[])[], confidence = 0.95): FleissKappa {
  requireOpenFraction(confidence, 'confidence')
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
  const kappa = oneCategory ? undefined : (observedAgreement - chanceAgreement) / (1 - chanceAgreement)
  const standardError =
    kappa === undefined || objects < 2
      ? undefined
      : errorOverObjects(counts, { agreementByObject, shareByCategory, chanceAgreement, kappa, inspectors })
  const reach = normalQuantile((1 + confidence) / 2) * (standardError ?? 0)
  return {
    objects,
    inspectors,
    observedAgreement,
    chanceAgreement,
    agreementByObject,
    shareByCategory,
    kappa,
    kappaByCategory: shareByCategory.map((share, j) => {
      if (share === 0 || share === 1) return undefined
      const split = counts.reduce((sum, row) => sum + row[j]! * (inspectors - row[j]!), 0)
      return 1 - split / (objects * pairs * share * (1 - share))
    }),
    standardErrorIfChance: oneCategory ? undefined : errorIfChance(shareByCategory, objects * pairs),
    standardError,
    interval:
      kappa === undefined || !standardError
        ? undefined
        : { lower: kappa - reach, upper: Math.min(1, kappa + reach) },
  }
}

type Found = Pick<FleissKappa, 'agreementByObject' | 'shareByCategory' | 'chanceAgreement' | 'inspectors'> & {
  kappa: number
}

/** How far each object pulls kappa, through its agreement and through the shares it changes. */
function errorOverObjects(counts: readonly (readonly number[])[], found: Found): number {
  const { agreementByObject, shareByCategory, chanceAgreement, kappa, inspectors } = found
  const pulls = counts.map((row, i) => {
    const chance = row.reduce((sum, n, j) => sum + (n / inspectors) * shareByCategory[j]!, 0)
    const own = (agreementByObject[i]! - chanceAgreement) / (1 - chanceAgreement)
    return own - (2 * (1 - kappa) * (chance - chanceAgreement)) / (1 - chanceAgreement) - kappa
  })
  const squares = pulls.reduce((sum, pull) => sum + pull ** 2, 0)
  return Math.sqrt(squares / (counts.length * (counts.length - 1)))
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
