import { describe, expect, test } from 'vitest'
import { chartConstants, SPREAD_FACTORS } from '@/shared/statistics/charts/constants'
import reference from '@/tests/reference/statistics/chart-constants.json'

describe('control-chart constants', () => {
  // Computed by mpmath and R from the definitions.
  test.each(reference.rows)('agree with their definitions at n = $n', (row) => {
    const found = chartConstants(row.n)
    for (const [name, value] of Object.entries(row))
      expect(found[name as keyof typeof found], name).toBeCloseTo(value, 9)
  })

  test('run from 2 to 25 without a gap, d2 and c4 rising and d3 falling after n = 3', () => {
    expect(SPREAD_FACTORS.map(({ n }) => n)).toEqual(Array.from({ length: 24 }, (_, index) => index + 2))
    SPREAD_FACTORS.slice(2).forEach((row, index) => {
      const before = SPREAD_FACTORS[index + 1]!
      expect(row.d2).toBeGreaterThan(before.d2)
      expect(row.c4).toBeGreaterThan(before.c4)
      expect(row.d3).toBeLessThan(before.d3)
    })
  })

  // c4 has a closed form, so it can be checked without any table: c4(2) = √(2/π), c4(3) = √π / 2.
  test('c4 has its closed values at n = 2 and 3', () => {
    expect(chartConstants(2).c4).toBeCloseTo(Math.sqrt(2 / Math.PI), 12)
    expect(chartConstants(3).c4).toBeCloseTo(Math.sqrt(Math.PI) / 2, 12)
  })

  // Table A.22 of a textbook appendix, read: rounded from three-decimal factors, so only to ±0.001.
  test.each([
    [5, 'A2', 0.577],
    [5, 'D4', 2.114],
    [10, 'B3', 0.284],
    [3, 'D4', 2.574],
    [19, 'D4', 1.597],
    [19, 'd3', 0.734],
  ] as const)('n = %i: %s is the printed %f within 0.001', (n, name, printed) => {
    expect(Math.abs(chartConstants(n)[name] - printed)).toBeLessThanOrEqual(0.001)
  })

  test.each([1, 26, 2.5, Number.NaN])('no constants for subgroups of %s', (n) => {
    expect(() => chartConstants(n)).toThrow(RangeError)
  })
})
