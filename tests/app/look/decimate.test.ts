import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { decimateByColumn } from '@/app/drawing/decimate'

const runs = fc
  .array(
    fc.record({
      step: fc.double({ min: 0.001, max: 5, noNaN: true }),
      y: fc.double({ min: -100, max: 100, noNaN: true }),
    }),
    { minLength: 1, maxLength: 400 },
  )
  .map((steps) => {
    let x = 0
    return steps.map(({ step, y }) => ({ x: (x += step), y }))
  })

describe('thinning a run of readings', () => {
  test('a short run comes back whole', () => {
    const run = [
      { x: 0, y: 1 },
      { x: 1, y: 2 },
    ]
    expect(decimateByColumn(run, 10)).toBe(run)
    expect(decimateByColumn([], 10)).toEqual([])
  })

  test('one excursion among 50,000 readings is kept', () => {
    const run = Array.from({ length: 50_000 }, (_, at) => ({
      x: at / 70,
      y: at === 31_234 ? 99 : Math.sin(at),
    }))
    const thin = decimateByColumn(run, 700)
    expect(thin.length).toBeLessThanOrEqual(4 * 701)
    expect(thin.some(({ y }) => y === 99)).toBe(true)
  })

  test('always keeps the ends, the lowest and the highest, in order, and never more than four a column', () => {
    fc.assert(
      fc.property(runs, fc.integer({ min: 1, max: 60 }), (run, columns) => {
        const thin = decimateByColumn(run, columns)
        const heights = run.map(({ y }) => y)
        const kept = thin.map(({ y }) => y)
        expect(thin[0]).toBe(run[0])
        expect(thin.at(-1)).toBe(run.at(-1))
        expect(Math.min(...kept)).toBe(Math.min(...heights))
        expect(Math.max(...kept)).toBe(Math.max(...heights))
        expect(thin.every((point, at) => at === 0 || point.x > thin[at - 1]!.x)).toBe(true)
        expect(thin.length).toBeLessThanOrEqual(4 * (columns + 1))
      }),
    )
  })

  test.each([0, -1, Number.NaN])('%s columns are refused', (columns) => {
    expect(() => decimateByColumn([{ x: 0, y: 0 }], columns)).toThrow(RangeError)
  })
})
