import { requireCount, requirePositive } from '@/shared/statistics/argument-checks'
import { chiSquareSf } from '@/shared/statistics/distributions/chi-square'

export type GoodnessOfFit = {
  chiSquare: number
  degreesOfFreedom: number
  pValue: number
  expected: readonly number[]
  /** Chi-square is approximate: true while every class expects five or more. */
  approximationHolds: boolean
}

const MIN_EXPECTED = 5

/**
 * Whether counts follow the weights of their classes (joints exposed, hours,
 * equal shares). Source: K. Pearson 1900; the rule of five is common practice.
 */
export function goodnessOfFit(observed: readonly number[], weights: readonly number[]): GoodnessOfFit {
  if (observed.length < 2 || observed.length !== weights.length)
    throw new RangeError(
      `Two classes or more are needed, each with a weight: ${observed.length} counts, ${weights.length} weights.`,
    )
  observed.forEach((seen, index) => requireCount(seen, `count of class ${index + 1}`))
  weights.forEach((weight, index) => requirePositive(weight, `weight of class ${index + 1}`))
  const total = observed.reduce((sum, seen) => sum + seen, 0)
  requirePositive(total, 'number of things counted')
  const whole = weights.reduce((sum, weight) => sum + weight, 0)
  const expected = weights.map((weight) => (total * weight) / whole)
  const chiSquare = observed.reduce(
    (sum, seen, index) => sum + (seen - expected[index]!) ** 2 / expected[index]!,
    0,
  )
  const degreesOfFreedom = observed.length - 1
  return {
    chiSquare,
    degreesOfFreedom,
    pValue: chiSquareSf(chiSquare, degreesOfFreedom),
    expected,
    approximationHolds: expected.every((count) => count >= MIN_EXPECTED),
  }
}
