import { describe, expect, test } from 'vitest'
import { breakEvenQuantity } from '@/shared/cost/break-even'
import { inspectAllOrNone } from '@/shared/cost/inspect-all-or-none'
import { costOfUnit } from '@/shared/cost/learning-curve'
import { annuityFactor, netPresentValue } from '@/shared/cost/present-value'
import { rollUpCosts } from '@/shared/cost/quality-cost'
import { expectedReworkCost } from '@/shared/cost/rework-cost'

describe('present value', () => {
  // Computed from the definition, payments at the end of the year.
  test('9.818147 for 8 % over twenty years, 12.462210 for 5 %', () => {
    expect(annuityFactor(0.08, 20)).toBeCloseTo(9.818147, 6)
    expect(annuityFactor(0.05, 20)).toBeCloseTo(12.462210342539992, 10)
    expect(annuityFactor(0, 20)).toBe(20)
  })

  test('50 000 now for 9000 a year: 38 363.33', () => {
    const sums = [-50_000, ...new Array<number>(20).fill(9000)]
    expect(netPresentValue(sums, 0.08)).toBeCloseTo(38363.33, 2)
    expect(-50_000 + 9000 * annuityFactor(0.08, 20)).toBeCloseTo(netPresentValue(sums, 0.08), 6)
  })

  test('a tiny rate keeps its digits', () => {
    expect(annuityFactor(1e-12, 20)).toBeCloseTo(20, 9)
  })

  test('negative rates and sums that are no numbers are refused', () => {
    expect(() => annuityFactor(-0.1, 20)).toThrow(RangeError)
    expect(() => netPresentValue([1, Number.NaN], 0.08)).toThrow('year 1')
  })
})

describe('rework', () => {
  // By hand: 500 joints at 100 per million are 0.05 defects; 0.0475 · 8 + 0.0025 · 0.2 · 800 = 0.38 + 0.40.
  test('0.38 here and 0.40 in service', () => {
    const found = expectedReworkCost({
      jointsPerBoard: 500,
      defectsPerMillionJoints: 100,
      shareFound: 0.95,
      costOfRework: 8,
      shareFailingInService: 0.2,
      costOfFieldRepair: 800,
    })
    expect(found.here).toBeCloseTo(0.38, 12)
    expect(found.inService).toBeCloseTo(0.4, 12)
    expect(found.total).toBeCloseTo(0.78, 12)
  })

  test('shares above one are refused', () => {
    const question = {
      jointsPerBoard: 500,
      defectsPerMillionJoints: 100,
      shareFound: 1.5,
      costOfRework: 8,
      shareFailingInService: 0.2,
      costOfFieldRepair: 800,
    }
    expect(() => expectedReworkCost(question)).toThrow(RangeError)
    expect(() => expectedReworkCost({ ...question, shareFound: 0.5, defectsPerMillionJoints: 2e6 })).toThrow(
      RangeError,
    )
  })
})

describe('inspect all or none', () => {
  // Deming, Out of the Crisis, chapter 15 (from memory): 0.50 to inspect, 25 if let through, 2 %.
  const costs = { costToInspect: 0.5, costIfLetThrough: 25 }
  test.each([
    [0.03, 'all'],
    [0.01, 'none'],
    [0.02, 'either'],
  ] as const)('%f: %s', (share, inspect) => {
    expect(inspectAllOrNone(share, costs)).toEqual({ inspect, breakEven: 0.02 })
  })
  test('a share above one is refused', () => {
    expect(() => inspectAllOrNone(2, costs)).toThrow(RangeError)
  })
})

describe('break-even and learning', () => {
  test('20 000 at 4 a board: 5000 boards', () => {
    expect(breakEvenQuantity(20_000, 4)).toBe(5000)
    expect(breakEvenQuantity(20_000, -1)).toBe(Infinity)
    expect(breakEvenQuantity(0, -1)).toBe(0)
    expect(() => breakEvenQuantity(1, Number.NaN)).toThrow(RangeError)
  })

  // Wright 1936 (from memory), computed: the 80 % curve.
  test.each([
    [1, 100],
    [2, 80],
    [4, 64],
    [8, 51.2],
    [10, 47.651],
    [100, 22.7062],
  ])('unit %i costs %f', (unit, cost) => {
    expect(costOfUnit(100, unit, 0.8)).toBeCloseTo(cost, 4)
  })
  test('a curve that rises is refused', () => {
    expect(() => costOfUnit(100, 2, 1.1)).toThrow(RangeError)
  })
})

describe('quality costs by class', () => {
  const classes = ['prevention', 'appraisal', 'internal-failure', 'external-failure'] as const

  test('sums and shares in the order asked for', () => {
    const found = rollUpCosts(
      [
        { costClass: 'internal-failure', amount: 30 },
        { costClass: 'prevention', amount: 10 },
        { costClass: 'internal-failure', amount: 60 },
      ],
      classes,
    )
    expect(found.total).toBe(100)
    expect(found.byClass.map(({ share }) => share)).toEqual([0.1, 0, 0.9, 0])
  })

  test('nothing spent has no shares; an unknown class is refused', () => {
    expect(rollUpCosts([], classes).byClass.every(({ share }) => share === 0)).toBe(true)
    expect(() => rollUpCosts([{ costClass: 'lunch' as 'prevention', amount: 1 }], classes)).toThrow('“lunch”')
    expect(() => rollUpCosts([{ costClass: 'prevention', amount: -1 }], classes)).toThrow(RangeError)
  })
})
