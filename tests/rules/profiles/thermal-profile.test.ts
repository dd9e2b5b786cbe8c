import { describe, expect, test } from 'vitest'
import { greatestDifference, summariseTrace } from '@/shared/profiles/thermal-profile'

// A profile of straight lines, so that every term can be read off with a pencil:
// 25 °C, +2 K/s to 150 °C (62.5 s), 150 → 200 °C over 80 s, +2 K/s to 240 °C (20 s), −3 K/s to 120 °C (40 s).
const corners = [
  [0, 25],
  [62.5, 150],
  [142.5, 200],
  [162.5, 240],
  [202.5, 120],
] as const
const at = (timeS: number): number => {
  const next = corners.findIndex(([t]) => t >= timeS)
  const [t1, c1] = corners[Math.max(1, next)]!
  const [t0, c0] = corners[Math.max(1, next) - 1]!
  return c0 + ((c1 - c0) * (timeS - t0)) / (t1 - t0)
}
const timesS = Array.from({ length: 406 }, (_, i) => i / 2)
const trace = { timesS, temperaturesC: timesS.map(at) }
const window = { liquidusC: 217, soakFromC: 150, soakToC: 200, slopeWindowS: 5 }

describe('a profile of straight lines', () => {
  const summary = summariseTrace(trace, window)
  test('peaks at 240 °C after 162.5 s', () => {
    expect(summary.peakC).toBe(240)
    expect(summary.peakAtS).toBe(162.5)
  })
  test('rises at 2 K/s and falls at 3 K/s', () => {
    expect(summary.steepestRiseKPerS).toBeCloseTo(2, 9)
    expect(summary.steepestFallKPerS).toBeCloseTo(3, 9)
  })
  test('a slope longer than the trace, or than what it holds of cooling, is not a number', () => {
    const slow = summariseTrace(trace, { ...window, slopeWindowS: 300 })
    expect(slow.steepestRiseKPerS).toBeNaN()
    expect(slow.steepestFallKPerS).toBeNaN()
    const unfinished = {
      timesS: timesS.slice(0, 330),
      temperaturesC: trace.temperaturesC.slice(0, 330),
    }
    expect(summariseTrace(unfinished, window).steepestFallKPerS).toBeNaN()
    expect(summariseTrace(unfinished, window).steepestRiseKPerS).toBeCloseTo(2, 9)
  })
  test('soaks for 80 s', () => expect(summary.soakS).toBeCloseTo(80, 9))
  // 217 → 240 at 2 K/s takes 11.5 s; 240 → 217 at 3 K/s takes 7.667 s.
  test('is above liquidus for 11.5 + 7.667 s', () =>
    expect(summary.timeAboveLiquidusS).toBeCloseTo(11.5 + 23 / 3, 9))
  test('one noisy sample is no ramp', () => {
    const noisy = { timesS, temperaturesC: trace.temperaturesC.map((c, i) => (i === 100 ? c + 3 : c)) }
    expect(summariseTrace(noisy, { ...window, slopeWindowS: 0 }).steepestRiseKPerS).toBeGreaterThan(7)
    expect(summariseTrace(noisy, { ...window, slopeWindowS: 10 }).steepestRiseKPerS).toBeLessThan(2.4)
  })
})

test('a cooler thermocouple shows the difference across the board', () => {
  const cooler = { timesS, temperaturesC: trace.temperaturesC.map((c, i) => (i >= 325 ? c - 12 : c - 4)) }
  expect(greatestDifference([trace, cooler])).toEqual({ differenceK: 12, atS: 162.5 })
})

test('times that stand still and missing temperatures are refused', () => {
  expect(() => summariseTrace({ timesS: [0, 0], temperaturesC: [1, 2] }, window)).toThrow(/Sample 2/)
  expect(() => summariseTrace({ timesS: [0, 1], temperaturesC: [1, Number.NaN] }, window)).toThrow(/Sample 2/)
  expect(() => summariseTrace({ timesS: [0], temperaturesC: [1] }, window)).toThrow(/two or more/)
})
