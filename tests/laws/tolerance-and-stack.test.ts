import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { normalQuantile } from '@/shared/statistics/distributions/normal'
import { differenceInWindow } from '@/shared/statistics/stack/probability-in-window'
import { rootSumSquareGap } from '@/shared/statistics/stack/root-sum-square'
import { worstCaseGap } from '@/shared/statistics/stack/worst-case'
import { oneSidedToleranceFactor } from '@/shared/statistics/tolerance/one-sided-factor'
import { twoSidedToleranceFactor } from '@/shared/statistics/tolerance/two-sided-factor'
import { boardYieldFromJointDefects } from '@/shared/statistics/yield/joint-defects-and-board-yield'
import { jointDefectsPerMillionFromYield } from '@/shared/statistics/yield/joint-defects-and-board-yield'
import { rolledYield } from '@/shared/statistics/yield/process-yield'

const readings = fc.integer({ min: 2, max: 500 })
const content = fc.record({
  coverage: fc.double({ min: 0.5, max: 0.9999, noNaN: true }),
  confidence: fc.double({ min: 0.5, max: 0.999, noNaN: true }),
})

describe('tolerance factors', () => {
  test('are never below the factor of a known population, for a confidence of a half or more', () => {
    fc.assert(
      fc.property(readings, content, (readings, content) => {
        const known = normalQuantile(content.coverage)
        expect(oneSidedToleranceFactor(readings, content)).toBeGreaterThanOrEqual(known - 1e-12)
        expect(twoSidedToleranceFactor(readings, content)).toBeGreaterThan(
          normalQuantile((1 + content.coverage) / 2),
        )
      }),
    )
  })
  test('rise with the coverage and with the confidence', () => {
    fc.assert(
      fc.property(readings, content, (readings, content) => {
        const more = { ...content, coverage: (content.coverage + 1) / 2 }
        const surer = { ...content, confidence: (content.confidence + 1) / 2 }
        for (const factor of [oneSidedToleranceFactor, twoSidedToleranceFactor]) {
          expect(factor(readings, more)).toBeGreaterThan(factor(readings, content))
          expect(factor(readings, surer)).toBeGreaterThan(factor(readings, content))
        }
      }),
    )
  })
  test('fall as readings are added, at the confidences in use', () => {
    const usual = fc.record({
      coverage: fc.constantFrom(0.9, 0.95, 0.99, 0.999),
      confidence: fc.constantFrom(0.9, 0.95, 0.99),
    })
    fc.assert(
      fc.property(readings, usual, (readings, content) => {
        for (const factor of [oneSidedToleranceFactor, twoSidedToleranceFactor]) {
          expect(factor(readings + 1, content)).toBeLessThan(factor(readings, content))
        }
      }),
    )
  })
})

const dimension = fc.record({
  nominalMm: fc.double({ min: 0, max: 100, noNaN: true }),
  toleranceMm: fc.double({ min: 0, max: 2, noNaN: true }),
  direction: fc.constantFrom(1 as const, -1 as const),
})

describe('stacks', () => {
  test('root sum square never reaches beyond the worst case', () => {
    fc.assert(
      fc.property(fc.array(dimension, { minLength: 1, maxLength: 8 }), (stack) => {
        const worst = worstCaseGap(stack)
        const likely = rootSumSquareGap(stack)
        expect(likely.nominalMm).toBe(worst.nominalMm)
        expect(likely.minMm).toBeGreaterThanOrEqual(worst.minMm - 1e-9)
        expect(likely.maxMm).toBeLessThanOrEqual(worst.maxMm + 1e-9)
      }),
    )
  })
  test('a wider window never holds less, and the shares add up', () => {
    const scattered = fc.record({
      meanMm: fc.double({ min: 0, max: 3, noNaN: true }),
      standardDeviationMm: fc.double({ min: 0, max: 0.2, noNaN: true }),
    })
    const ends = fc.tuple(
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
    )
    fc.assert(
      fc.property(scattered, scattered, ends, (hole, lead, [minMm, widthMm]) => {
        const narrow = differenceInWindow(hole, lead, { minMm, maxMm: minMm + widthMm })
        const wide = differenceInWindow(hole, lead, {
          minMm: minMm - 0.1,
          maxMm: minMm + widthMm + 0.1,
        })
        expect(wide.within).toBeGreaterThanOrEqual(narrow.within - 1e-12)
        expect(narrow.below + narrow.within + narrow.above).toBeCloseTo(1, 12)
      }),
    )
  })
})

describe('yields', () => {
  test('joint defects and board yield undo each other', () => {
    const joints = fc.integer({ min: 1, max: 10_000 })
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1, noNaN: true }), joints, (boardYield, joints) => {
        const perMillion = jointDefectsPerMillionFromYield(boardYield, joints)
        expect(perMillion).toBeGreaterThanOrEqual(0)
        expect(boardYieldFromJointDefects(perMillion, joints)).toBeCloseTo(boardYield, 11)
      }),
    )
  })
  test('a rolled yield is never better than its worst step', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 9 }),
        (steps) => {
          expect(rolledYield(steps)).toBeLessThanOrEqual(Math.min(...steps))
        },
      ),
    )
  })
})
