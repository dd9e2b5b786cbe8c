import { describe, expect, test } from 'vitest'
import { normalityLook } from '@/shared/statistics/comparison/normality'

const SKEWED = [1.2, 1.4, 1.1, 1.3, 1.25, 1.6, 1.9, 1.15, 1.22, 1.18, 1.31, 2.8]
const EVEN = [9.7, 8.9, 10.2, 8.7, 8.3, 9, 10.4, 9, 9.9, 8.6, 10.3, 8.9, 9.1, 10, 9.9, 8.8, 9.4, 7.9, 8.1, 10]

describe('Anderson–Darling', () => {
  // A² by scipy 1.17.1 (scipy.stats.anderson), times 1 + 0.75/n + 2.25/n².
  test.each([
    [SKEWED, 1.6076515557619941],
    [EVEN, 0.4322174],
  ])('statistic', (readings, expected) => {
    expect(normalityLook(readings).statistic).toBeCloseTo(expected, 6)
  })
  // D'Agostino and Stephens (1986), table 4.7: 5 % at 0.752, 1 % at 1.035 (from memory).
  test('a skewed sample is far below 1 %, an even one far above 5 %', () => {
    expect(normalityLook(SKEWED).pValue).toBeLessThan(0.01)
    expect(normalityLook(EVEN).pValue).toBeGreaterThan(0.2)
  })
  test('too few readings, or all alike, have no shape', () => {
    expect(() => normalityLook(SKEWED.slice(0, 7))).toThrow(RangeError)
    expect(() => normalityLook(new Array<number>(9).fill(1))).toThrow(RangeError)
  })
})
