import { describe, expect, test } from 'vitest'
import { howeToleranceFactor } from '@/shared/statistics/tolerance/howe-factor'
import { oneSidedToleranceFactor } from '@/shared/statistics/tolerance/one-sided-factor'
import { lowerToleranceBound, toleranceInterval } from '@/shared/statistics/tolerance/tolerance-bound'
import { upperToleranceBound } from '@/shared/statistics/tolerance/tolerance-bound'
import { twoSidedToleranceFactor } from '@/shared/statistics/tolerance/two-sided-factor'
import reference from '@/tests/reference/statistics/tolerance.json'
import { relativeError } from './relative-error'

// One-sided computed with scipy's noncentral t; two-sided with a double integral in R; Howe in closed form.
describe.each(reference.factors.rows)('$readings readings, $coverage/$confidence', (row) => {
  const { readings, ...content } = row
  test('one-sided', () => {
    expect(relativeError(oneSidedToleranceFactor(readings, content), row.oneSided)).toBeLessThan(1e-10)
  })
  test('two-sided', () => {
    // The reference's own integration is good to its eight printed digits from 5 readings on.
    expect(relativeError(twoSidedToleranceFactor(readings, content), row.twoSided)).toBeLessThan(1e-7)
  })
  test('Howe', () => {
    expect(relativeError(howeToleranceFactor(readings, content), row.howe)).toBeLessThan(1e-9)
  })
})

// Berthouex and Brown, Statistics for Environmental Engineers, table 21.1 (read): 95 % confidence.
describe('the printed two-sided table', () => {
  test.each(Object.entries(reference.printedTwoSided.rows))('%s readings', (readings, printed) => {
    const factors = [0.9, 0.95, 0.99].map((coverage) =>
      Number(twoSidedToleranceFactor(Number(readings), { coverage, confidence: 0.95 }).toFixed(2)),
    )
    expect(factors).toEqual(printed)
  })
})

// Computed with scipy 1.17.1 and a 200-point Gauss–Legendre rule, a different quadrature.
describe('two-sided at the extremes', () => {
  test.each([
    [2, 0.9, 0.9, 15.512325981126635],
    [2, 0.99999, 0.999, 3869.970066684354],
    [3, 0.99, 0.9, 8.818604647175981],
    [400, 0.5, 0.5, 0.6758969454440557],
  ])('%i readings, %f/%f', (readings, coverage, confidence, expected) => {
    const factor = twoSidedToleranceFactor(readings, { coverage, confidence })
    expect(relativeError(factor, expected)).toBeLessThan(1e-11)
  })
})

// NIST/SEMATECH e-Handbook 7.2.6.3 (read): 43 readings, 90 % of the population, 99 % confidence.
describe('the handbook’s 43 wafers', () => {
  const { nist } = reference
  const content = { coverage: nist.coverage, confidence: nist.confidence }

  test('one-sided factor 1.8740, two-sided 2.217 by Howe', () => {
    expect(oneSidedToleranceFactor(nist.readings, content)).toBeCloseTo(nist.oneSidedPrinted, 4)
    expect(howeToleranceFactor(nist.readings, content)).toBeCloseTo(nist.howePrinted, 3)
  })
  test('six readings take 4.4111', () => {
    expect(oneSidedToleranceFactor(6, content)).toBeCloseTo(nist.sixReadingsPrinted, 4)
  })
  test('an upper limit of 97.120, not the 102.096 of an older edition that took s for 2.68', () => {
    const limit = nist.mean + oneSidedToleranceFactor(nist.readings, content) * nist.standardDeviation
    expect(limit).toBeCloseTo(97.12022, 4)
  })
})

describe('bounds of readings', () => {
  const readings = [6.1, 5.8, 6.4, 6.0, 5.9, 6.3, 6.2, 5.7, 6.1, 6.0]
  const content = { coverage: 0.95, confidence: 0.95 }
  // Mean 6.05, sample standard deviation 0.2173067 by hand; factors 2.9109634 and 3.3934295 as above.
  test('mean less and plus the factor times the standard deviation', () => {
    expect(lowerToleranceBound(readings, content)).toBeCloseTo(6.05 - 2.9109634 * 0.2173067, 6)
    expect(upperToleranceBound(readings, content)).toBeCloseTo(6.05 + 2.9109634 * 0.2173067, 6)
    const { lower, upper } = toleranceInterval(readings, content)
    expect(lower).toBeCloseTo(6.05 - 3.3934295 * 0.2173067, 6)
    expect(upper).toBeCloseTo(6.05 + 3.3934295 * 0.2173067, 6)
  })
  test('readings without spread give their mean', () => {
    expect(lowerToleranceBound([5, 5, 5], content)).toBe(5)
  })
  test('one reading shows no spread and is refused', () => {
    expect(() => lowerToleranceBound([5], content)).toThrow(RangeError)
    expect(() => oneSidedToleranceFactor(1, content)).toThrow('readings must be a whole number of 2 or more')
    expect(() => twoSidedToleranceFactor(1, content)).toThrow(RangeError)
    expect(() => howeToleranceFactor(1, content)).toThrow(RangeError)
  })
  test.each([
    ['a coverage of 1', { coverage: 1, confidence: 0.9 }],
    ['a NaN coverage', { coverage: NaN, confidence: 0.9 }],
    ['a confidence of 0', { coverage: 0.9, confidence: 0 }],
  ])('%s is refused', (_, wrong) => {
    expect(() => oneSidedToleranceFactor(10, wrong)).toThrow(RangeError)
    expect(() => twoSidedToleranceFactor(10, wrong)).toThrow(RangeError)
  })
  test('a reading that is no number is refused', () => {
    expect(() => upperToleranceBound([5, NaN, 6], content)).toThrow(/Number 2/)
  })
})
