import { describe, expect, test } from 'vitest'
import { toleranceShown } from '@/shared/plating/tolerance-shown'

const content = { coverage: 0.95, confidence: 0.95 }

/** Specimens of one reading, half a step below the mean, half above: mean and s are exact by construction. */
const spread = (count: number, mean: number, s: number): number[][] => {
  const step = s * Math.sqrt((count - 1) / count)
  return Array.from({ length: count }, (_, at) => [mean + (at % 2 === 0 ? -step : step)])
}

// One-sided factors k for 95 % covered with 95 % confidence: 2.9109634 for 10 readings, 2.5660004
// for 15, 2.3960017 for 20 (noncentral t; NIST/SEMATECH e-Handbook 7.2.6.3; computed with scipy).
describe('a lower bound', () => {
  test('lies 2.911 standard deviations under the mean of ten', () => {
    const shown = toleranceShown(spread(10, 8, 0.5), { value: 5, side: 'lower' }, content)
    expect(shown.standardDeviation).toBeCloseTo(0.5, 12)
    expect(shown.factor).toBeCloseTo(2.9109634, 6)
    expect(shown.bound).toBeCloseTo(8 - 2.9109634 * 0.5, 6)
    expect(shown.outcome).toBe('shown')
  })
  test.each([
    [2.5661, 15],
    [2.5659, 16],
    [2.3961, 20],
    [2.3959, 21],
  ])('with room for %s standard deviations, %s readings would be enough', (marginValue, enough) => {
    const shown = toleranceShown(spread(10, 5 + marginValue * 0.5, 0.5), { value: 5, side: 'lower' }, content)
    expect(shown.outcome).toBe('too few')
    expect(shown.enough).toBe(enough)
  })
  test('a mean less than 1.645 standard deviations inside cannot be mended by more readings', () => {
    const at = (marginValue: number) =>
      toleranceShown(spread(10, 5 + marginValue * 0.5, 0.5), { value: 5, side: 'lower' }, content).outcome
    expect(at(1.6)).toBe('outside')
    expect(at(-1)).toBe('outside')
    expect(at(1.75)).toBe('too few')
  })
  test('just inside the bound it is shown', () => {
    const { bound } = toleranceShown(spread(10, 8, 0.5), { value: 5, side: 'lower' }, content)
    const at = (value: number) =>
      toleranceShown(spread(10, 8, 0.5), { value, side: 'lower' }, content).outcome
    expect(at(bound!)).toBe('shown')
    expect(at(bound! + 1e-9)).toBe('too few')
  })
})

test('an upper bound mirrors the lower', () => {
  const lower = toleranceShown(spread(10, 8, 0.5), { value: 5, side: 'lower' }, content)
  const upper = toleranceShown(spread(10, 8, 0.5), { value: 11, side: 'upper' }, content)
  expect(upper.bound! - 8).toBeCloseTo(8 - lower.bound!, 12)
})
test('a single reading shows no spread', () => {
  const shown = toleranceShown([[8]], { value: 5, side: 'lower' }, content)
  expect(shown.outcome).toBe('too few')
  expect(shown.bound).toBeUndefined()
  expect(toleranceShown([[4]], { value: 5, side: 'lower' }, content).outcome).toBe('outside')
})
test('no readings, no statement', () => {
  expect(() => toleranceShown([], { value: 5, side: 'lower' }, content)).toThrow(RangeError)
})
