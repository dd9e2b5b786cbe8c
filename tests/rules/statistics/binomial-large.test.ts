import { expect, test } from 'vitest'
import { binomialSf } from '@/shared/statistics/distributions/binomial'
import { relativeError } from './relative-error'

// Tail sums of 40 digits (mpmath), term by term from the largest.
test.each([
  [900, 1000, 0.5, 7.4278180964365052e-163, 1e-10],
  [501_000, 1_000_000, 0.5, 0.022696167954672128, 1e-10],
  [50_000, 1_000_000, 0.049, 1.9128079972971545e-6, 1e-10],
  [4_955_000, 9_900_000, 0.5, 0.00074012793261401326, 1e-9],
  [9_000_000, 9_900_000, 0.909, 0.15984597337285431, 1e-9],
  [1300, 9_999_999, 1e-4, 5.2563199572021577e-20, 1e-9],
])('more than %i of %i at %f', (successes, trials, chance, expected, within) => {
  expect(relativeError(binomialSf(successes, trials, chance), expected)).toBeLessThan(within)
})
