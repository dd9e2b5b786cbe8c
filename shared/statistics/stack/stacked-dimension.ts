import { requireNotNegative } from '../argument-checks'

/** One dimension of a stack: added (1) or taken away (−1), with a symmetric tolerance. */
export interface StackedDimension {
  nominalMm: number
  toleranceMm: number
  direction: 1 | -1
}

/** What is left of a stack: nominal and the extremes. */
export interface StackedGap {
  nominalMm: number
  minMm: number
  maxMm: number
}

/** Sum of the nominals with their directions. Errors: RangeError for a nominal that is no number. */
export function nominalGapMm(dimensions: readonly StackedDimension[]): number {
  requireDimensions(dimensions)
  return dimensions.reduce((sum, { nominalMm, direction }) => sum + direction * nominalMm, 0)
}

export function requireDimensions(dimensions: readonly StackedDimension[]): void {
  if (dimensions.length === 0) throw new RangeError('A stack needs at least one dimension.')
  dimensions.forEach(({ nominalMm, toleranceMm }, index) => {
    if (!Number.isFinite(nominalMm)) {
      throw new RangeError(`The nominal of dimension ${index + 1} is ${nominalMm}, which is no length.`)
    }
    requireNotNegative(toleranceMm, `tolerance of dimension ${index + 1}`)
  })
}
