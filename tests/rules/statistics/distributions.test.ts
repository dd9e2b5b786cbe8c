import { describe, expect, test } from 'vitest'
import { betaCdf, betaPdf, betaQuantile, betaSf } from '@/shared/statistics/distributions/beta'
import { binomialCdf, binomialPmf, binomialSf } from '@/shared/statistics/distributions/binomial'
import { chiSquareCdf, chiSquareQuantile, chiSquareSf } from '@/shared/statistics/distributions/chi-square'
import { fCdf, fQuantile, fSf } from '@/shared/statistics/distributions/fisher-f'
import { gammaCdf, gammaPdf, gammaQuantile, gammaSf } from '@/shared/statistics/distributions/gamma'
import { hypergeometricCdf, hypergeometricPmf } from '@/shared/statistics/distributions/hypergeometric'
import { hypergeometricSf } from '@/shared/statistics/distributions/hypergeometric'
import { regularisedBeta, regularisedBetaQuantile } from '@/shared/statistics/distributions/incomplete-beta'
import { regularisedGamma } from '@/shared/statistics/distributions/incomplete-gamma'
import { regularisedGammaQuantile } from '@/shared/statistics/distributions/incomplete-gamma'
import { regularisedGammaUpper } from '@/shared/statistics/distributions/incomplete-gamma'
import { lnGamma } from '@/shared/statistics/distributions/ln-gamma'
import {
  noncentralTCdf,
  noncentralTQuantile,
  noncentralTSf,
} from '@/shared/statistics/distributions/noncentral-t'
import { normalCdf, normalPdf, normalQuantile, normalSf } from '@/shared/statistics/distributions/normal'
import { poissonCdf, poissonPmf, poissonSf } from '@/shared/statistics/distributions/poisson'
import { studentTCdf, studentTPdf, studentTQuantile } from '@/shared/statistics/distributions/student-t'
import { studentTSf } from '@/shared/statistics/distributions/student-t'
import { weibullCdf, weibullPdf, weibullQuantile, weibullSf } from '@/shared/statistics/distributions/weibull'
import kernels from '@/tests/reference/statistics/kernels.json'
import { relativeError } from './relative-error'

type Inputs = Record<string, number>
const of = (inputs: Inputs, name: string): number => {
  const value = inputs[name]
  if (value === undefined) throw new Error(`The reference point has no input ${name}.`)
  return value
}
const noncentral = (inputs: Inputs) => ({
  degreesOfFreedom: of(inputs, 'df'),
  noncentrality: of(inputs, 'delta'),
})
const draw = (inputs: Inputs) => ({
  lotSize: of(inputs, 'N'),
  defectives: of(inputs, 'K'),
  sampleSize: of(inputs, 'n'),
})

const FUNCTIONS: Record<string, (inputs: Inputs) => number> = {
  normal_cdf: (i) => normalCdf(of(i, 'x')),
  normal_sf: (i) => normalSf(of(i, 'x')),
  normal_quantile: (i) => normalQuantile(of(i, 'p')),
  lgamma: (i) => lnGamma(of(i, 'x')),
  reg_inc_beta: (i) => regularisedBeta(of(i, 'x'), of(i, 'a'), of(i, 'b')),
  inv_reg_inc_beta: (i) => regularisedBetaQuantile(of(i, 'p'), of(i, 'a'), of(i, 'b')),
  reg_gamma_P: (i) => regularisedGamma(of(i, 'a'), of(i, 'x')),
  reg_gamma_Q: (i) => regularisedGammaUpper(of(i, 'a'), of(i, 'x')),
  inv_reg_gamma_P: (i) => regularisedGammaQuantile(of(i, 'p'), of(i, 'a')),
  t_quantile: (i) => studentTQuantile(of(i, 'p'), of(i, 'df')),
  nct_cdf: (i) => noncentralTCdf(of(i, 't'), noncentral(i)),
  nct_quantile: (i) => noncentralTQuantile(of(i, 'p'), noncentral(i)),
  binom_cdf: (i) => binomialCdf(of(i, 'k'), of(i, 'n'), of(i, 'p')),
  poisson_cdf: (i) => poissonCdf(of(i, 'k'), of(i, 'lambda')),
  hypergeom_cdf: (i) => hypergeometricCdf(of(i, 'k'), draw(i)),
  chi2_quantile: (i) => chiSquareQuantile(of(i, 'p'), of(i, 'df')),
  F_quantile: (i) => fQuantile(of(i, 'p'), of(i, 'df1'), of(i, 'df2')),
}

// Computed with mpmath at 60 digits (noncentral t 40), cross-checked with scipy and R.
describe('reference points at 60 digits', () => {
  const points = kernels.points as unknown as { function: string; inputs: Inputs; value: number }[]

  test('there are 169 of them, over 17 functions', () => {
    expect(points).toHaveLength(169)
    expect(new Set(points.map((point) => point.function))).toEqual(new Set(Object.keys(FUNCTIONS)))
  })

  test.each(Object.keys(FUNCTIONS))('%s agrees to 1e-12', (name) => {
    for (const point of points.filter((point) => point.function === name)) {
      const value = FUNCTIONS[name]!(point.inputs)
      // Next to its zeros at 1 and 2 the log-gamma function can only be compared absolutely.
      const nearZero = name === 'lgamma' && Math.abs(point.value) < 1e-6
      const error = nearZero ? Math.abs(value - point.value) : relativeError(value, point.value)
      expect(error, JSON.stringify(point)).toBeLessThan(nearZero ? 1e-15 : 1e-12)
    }
  })
})

// Computed with scipy 1.17.1 (gammainc, gammaincc, stats.t, stats.f, stats.binom, stats.hypergeom).
describe('points that the general library’s own functions miss or that lie far out', () => {
  test.each([
    ['upper gamma, shape 10 000', () => regularisedGammaUpper(1e4, 1.01e4), 0.15865124955282037],
    ['lower gamma, shape 1 000 000', () => regularisedGamma(1e6, 1.001e6), 0.8413447863683402],
    ['gamma quantile, shape 1000', () => regularisedGammaQuantile(0.975, 1000), 1062.9211512248878],
    [
      'beta quantile, shapes 1 and 10 million',
      () => regularisedBetaQuantile(0.99, 1e6, 1e7),
      0.09111084441970758,
    ],
  ])('%s', (_, compute, expected) => {
    expect(relativeError(compute(), expected)).toBeLessThan(1e-10)
  })

  test.each([
    [0.95, 4, 5e7, 1.5507311384831751e-7],
    [0.9, 2, 1e9, 3.889720156388758e-9],
  ])('beta quantile at %f, shapes %i and %i, where the library keeps nine digits', (p, a, b, expected) => {
    expect(relativeError(regularisedBetaQuantile(p, a, b), expected)).toBeLessThan(2e-9)
  })

  // Computed with mpmath 1.3.0 at 30 digits; scipy is off by 1e-8 here.
  test('lower gamma five standard deviations down at shape 557 276', () => {
    const value = regularisedGamma(557275.8261535963, 553292.5589388178)
    expect(relativeError(value, 4.442190033997498e-8)).toBeLessThan(1e-9)
  })

  // One degree of freedom in closed form: ½ + arctan t / π.
  test.each([1e-8, 1e-4, 0.3, 40, 1e8])('Student’s t with one degree of freedom at %f', (t) => {
    expect(Math.abs(studentTCdf(t, 1) - 0.5 - Math.atan(t) / Math.PI)).toBeLessThan(1e-15)
    expect(relativeError(studentTSf(t, 1), Math.atan(1 / t) / Math.PI)).toBeLessThan(1e-14)
  })

  // Computed with mpmath 1.3.0 at 30 digits, by the integral over the one chi variable.
  test('noncentral t far out in a heavy tail', () => {
    const heavy = { degreesOfFreedom: 1, noncentrality: 39.90478518601968 }
    expect(noncentralTCdf(4455754, heavy)).toBeCloseTo(0.99999285431556552, 13)
  })

  test('the R approximation of noncentral t above noncentrality 37.62 is not repeated', () => {
    expect(noncentralTCdf(60, { degreesOfFreedom: 199, noncentrality: 55 })).toBeCloseTo(0.94121598, 8)
  })
})

describe('densities are the slopes of their distribution functions', () => {
  const slope = (cdf: (x: number) => number, x: number) => (cdf(x + 1e-5) - cdf(x - 1e-5)) / 2e-5
  test.each([
    ['normal', normalPdf(0.7), slope(normalCdf, 0.7)],
    ['Student’s t', studentTPdf(1.3, 5), slope((t) => studentTCdf(t, 5), 1.3)],
    ['beta', betaPdf(0.3, 2.5, 4), slope((x) => betaCdf(x, 2.5, 4), 0.3)],
    ['gamma', gammaPdf(3, 2.5, 1.7), slope((x) => gammaCdf(x, 2.5, 1.7), 3)],
    ['Weibull', weibullPdf(2, 1.8, 3), slope((x) => weibullCdf(x, 1.8, 3), 2)],
  ])('%s', (_, density, expected) => {
    expect(relativeError(density, expected)).toBeLessThan(1e-8)
  })
})

describe('the two tails add up to 1', () => {
  const noncentral = { degreesOfFreedom: 9, noncentrality: 5.2 }
  test.each([
    ['normal', normalCdf(1.1) + normalSf(1.1)],
    ['Student’s t', studentTCdf(-0.4, 7) + studentTSf(-0.4, 7)],
    ['chi-square', chiSquareCdf(8, 5) + chiSquareSf(8, 5)],
    ['F', fCdf(2.2, 3, 12) + fSf(2.2, 3, 12)],
    ['beta', betaCdf(0.2, 3, 9) + betaSf(0.2, 3, 9)],
    ['gamma', gammaCdf(4, 2.2, 1.5) + gammaSf(4, 2.2, 1.5)],
    ['binomial', binomialCdf(3, 30, 0.1) + binomialSf(3, 30, 0.1)],
    ['Poisson', poissonCdf(4, 3.3) + poissonSf(4, 3.3)],
    ['Weibull', weibullCdf(2, 1.5, 3) + weibullSf(2, 1.5, 3)],
    ['noncentral t', noncentralTCdf(6, noncentral) + noncentralTSf(6, noncentral)],
    [
      'hypergeometric',
      hypergeometricCdf(2, { lotSize: 60, defectives: 9, sampleSize: 20 }) +
        hypergeometricSf(2, { lotSize: 60, defectives: 9, sampleSize: 20 }),
    ],
  ])('%s', (_, sum) => {
    expect(sum).toBeCloseTo(1, 13)
  })
})

describe('closed forms', () => {
  test('Weibull of shape 1 is exponential: half have failed at ln 2 of the scale', () => {
    expect(weibullQuantile(0.5, 1, 1000)).toBeCloseTo(1000 * Math.LN2, 10)
    expect(weibullCdf(1000, 3.2, 1000)).toBeCloseTo(1 - Math.exp(-1), 15)
  })
  test('chi-square with 2 degrees of freedom is exponential', () => {
    expect(chiSquareSf(5.991464547107979, 2)).toBeCloseTo(0.05, 14)
    expect(gammaQuantile(0.95, 1, 1)).toBeCloseTo(-Math.log(0.05), 13)
  })
  test('beta of shapes 1 and 1 is uniform', () => {
    expect(betaQuantile(0.37, 1, 1)).toBeCloseTo(0.37, 15)
  })
  test('Poisson and binomial probabilities add up to their distribution functions', () => {
    const upTo = (pmf: (x: number) => number, last: number) =>
      Array.from({ length: last + 1 }, (_, x) => pmf(x)).reduce((a, b) => a + b)
    expect(upTo((x) => poissonPmf(x, 6.5), 9)).toBeCloseTo(poissonCdf(9, 6.5), 13)
    expect(upTo((x) => binomialPmf(x, 40, 0.13), 6)).toBeCloseTo(binomialCdf(6, 40, 0.13), 13)
    const lot = { lotSize: 90, defectives: 12, sampleSize: 25 }
    expect(upTo((x) => hypergeometricPmf(x, lot), 4)).toBeCloseTo(hypergeometricCdf(4, lot), 13)
  })
})

describe('ends and refusals', () => {
  test('quantiles at 0 and 1 are the ends of the support', () => {
    expect(normalQuantile(0)).toBe(-Infinity)
    expect(normalQuantile(1)).toBe(Infinity)
    expect(regularisedBetaQuantile(0, 2, 3)).toBe(0)
    expect(regularisedBetaQuantile(1, 2, 3)).toBe(1)
    expect(regularisedGammaQuantile(0, 2)).toBe(0)
    expect(regularisedGammaQuantile(1, 2)).toBe(Infinity)
    expect(studentTQuantile(0, 4)).toBe(-Infinity)
    expect(noncentralTQuantile(1, { degreesOfFreedom: 4, noncentrality: 1 })).toBe(Infinity)
    expect(noncentralTCdf(-Infinity, { degreesOfFreedom: 4, noncentrality: 1 })).toBe(0)
    expect(noncentralTCdf(Infinity, { degreesOfFreedom: 4, noncentrality: 1 })).toBe(1)
  })
  test('a chance of 0 or 1 is certain', () => {
    expect(binomialCdf(0, 12, 0)).toBe(1)
    expect(binomialCdf(11, 12, 1)).toBe(0)
    expect(binomialPmf(12, 12, 1)).toBe(1)
    expect(poissonCdf(0, 0)).toBe(1)
  })
  test('a sample of the whole lot finds every defective', () => {
    const whole = { lotSize: 30, defectives: 4, sampleSize: 30 }
    expect(hypergeometricPmf(4, whole)).toBe(1)
    expect(hypergeometricCdf(3, whole)).toBe(0)
  })
  test.each([
    ['NaN deviate', () => normalCdf(NaN)],
    ['probability above 1', () => normalQuantile(1.1)],
    ['NaN probability', () => studentTQuantile(NaN, 4)],
    ['no degrees of freedom', () => studentTQuantile(0.9, 0)],
    ['negative chi-square', () => chiSquareCdf(-1, 3)],
    ['half a success', () => binomialCdf(0.5, 10, 0.1)],
    ['more successes than trials', () => binomialPmf(11, 10, 0.1)],
    [
      'more defectives than the lot',
      () => hypergeometricCdf(0, { lotSize: 5, defectives: 6, sampleSize: 2 }),
    ],
    ['infinite noncentrality', () => noncentralTCdf(1, { degreesOfFreedom: 3, noncentrality: Infinity })],
    ['log-gamma of 0', () => lnGamma(0)],
    ['negative life', () => weibullCdf(-1, 2, 1)],
  ])('%s is refused with a sentence', (_, call) => {
    expect(call).toThrow(RangeError)
    expect(call).toThrow(/\.$/)
  })
})
