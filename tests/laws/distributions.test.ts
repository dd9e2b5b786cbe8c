import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { binomialCdf } from '@/shared/statistics/distributions/binomial'
import { chiSquareCdf, chiSquareQuantile } from '@/shared/statistics/distributions/chi-square'
import { fCdf, fQuantile } from '@/shared/statistics/distributions/fisher-f'
import { hypergeometricCdf } from '@/shared/statistics/distributions/hypergeometric'
import { regularisedBeta, regularisedBetaQuantile } from '@/shared/statistics/distributions/incomplete-beta'
import { noncentralTCdf, noncentralTQuantile } from '@/shared/statistics/distributions/noncentral-t'
import { normalCdf, normalQuantile } from '@/shared/statistics/distributions/normal'
import { poissonCdf } from '@/shared/statistics/distributions/poisson'
import { studentTCdf, studentTQuantile } from '@/shared/statistics/distributions/student-t'
import { weibullCdf, weibullQuantile } from '@/shared/statistics/distributions/weibull'

const probability = fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true })
const degrees = fc.double({ min: 1, max: 1000, noNaN: true })
const shape = fc.double({ min: 0.2, max: 2000, noNaN: true })

describe('a quantile is undone by its distribution function', () => {
  const undone = (reached: number, wanted: number): void => {
    expect(Math.abs(reached - wanted)).toBeLessThan(1e-11)
  }

  test('normal', () => {
    fc.assert(fc.property(probability, (p) => undone(normalCdf(normalQuantile(p)), p)))
  })
  test('Student’s t', () => {
    fc.assert(
      fc.property(probability, degrees, (p, df) => undone(studentTCdf(studentTQuantile(p, df), df), p)),
    )
  })
  test('chi-square', () => {
    fc.assert(
      fc.property(probability, degrees, (p, df) => undone(chiSquareCdf(chiSquareQuantile(p, df), df), p)),
    )
  })
  test('F', () => {
    fc.assert(
      fc.property(probability, degrees, degrees, (p, a, b) => undone(fCdf(fQuantile(p, a, b), a, b), p)),
    )
  })
  test('beta, where x is not squeezed against 1', () => {
    fc.assert(
      fc.property(probability, shape, shape, (p, a, b) => {
        const x = regularisedBetaQuantile(p, a, b)
        fc.pre(x < 1 - 1e-4)
        undone(regularisedBeta(x, a, b), p)
      }),
    )
  })
  test('Weibull', () => {
    fc.assert(
      fc.property(probability, fc.double({ min: 0.3, max: 20, noNaN: true }), (p, slope) =>
        undone(weibullCdf(weibullQuantile(p, slope, 1000), slope, 1000), p),
      ),
    )
  })
  test('noncentral t', () => {
    const noncentrality = fc.double({ min: -20, max: 60, noNaN: true })
    fc.assert(
      fc.property(probability, degrees, noncentrality, (p, degreesOfFreedom, noncentrality) => {
        const distribution = { degreesOfFreedom, noncentrality }
        undone(noncentralTCdf(noncentralTQuantile(p, distribution), distribution), p)
      }),
    )
  })
})

describe('distributions run into each other', () => {
  const t = fc.double({ min: -8, max: 8, noNaN: true })

  test('noncentral t without noncentrality is Student’s t', () => {
    fc.assert(
      fc.property(t, degrees, (t, degreesOfFreedom) => {
        const central = noncentralTCdf(t, { degreesOfFreedom, noncentrality: 0 })
        expect(Math.abs(central - studentTCdf(t, degreesOfFreedom))).toBeLessThan(1e-12)
      }),
    )
  })
  test('noncentral t mirrors: below t at δ is above −t at −δ', () => {
    fc.assert(
      fc.property(
        t,
        degrees,
        fc.double({ min: -9, max: 9, noNaN: true }),
        (t, degreesOfFreedom, noncentrality) => {
          const below = noncentralTCdf(t, { degreesOfFreedom, noncentrality })
          const mirrored = noncentralTCdf(-t, { degreesOfFreedom, noncentrality: -noncentrality })
          expect(below + mirrored).toBeCloseTo(1, 12)
        },
      ),
    )
  })
  test('the more readings, the nearer Student’s t to the normal', () => {
    fc.assert(
      fc.property(t, (t) => {
        expect(Math.abs(studentTCdf(t, 1e7) - normalCdf(t))).toBeLessThan(1e-6)
      }),
    )
  })
  test('drawing from a lot a million times the sample is drawing from a process', () => {
    const cases = fc.record({
      sampleSize: fc.integer({ min: 1, max: 60 }),
      percent: fc.integer({ min: 1, max: 99 }),
    })
    fc.assert(
      fc.property(cases, fc.nat(60), ({ sampleSize, percent }, pick) => {
        const found = pick % (sampleSize + 1)
        const lot = { lotSize: 1e8, defectives: percent * 1e6, sampleSize }
        const process = binomialCdf(found, sampleSize, percent / 100)
        expect(Math.abs(hypergeometricCdf(found, lot) - process)).toBeLessThan(1e-5)
      }),
    )
  })
  test('what is drawn and what is defective can change places', () => {
    const lot = fc.record({
      lotSize: fc.integer({ min: 1, max: 400 }),
      a: fc.nat(),
      b: fc.nat(),
      found: fc.nat(400),
    })
    fc.assert(
      fc.property(lot, ({ lotSize, a, b, found }) => {
        const [defectives, sampleSize] = [a % (lotSize + 1), b % (lotSize + 1)]
        const one = hypergeometricCdf(found, { lotSize, defectives, sampleSize })
        const other = hypergeometricCdf(found, { lotSize, defectives: sampleSize, sampleSize: defectives })
        expect(Math.abs(one - other)).toBeLessThan(1e-12)
      }),
    )
  })
  test('many trials of a small chance are Poisson', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 30 }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (found, mean) => {
          expect(Math.abs(binomialCdf(found, 1e8, mean / 1e8) - poissonCdf(found, mean))).toBeLessThan(1e-6)
        },
      ),
    )
  })
})
