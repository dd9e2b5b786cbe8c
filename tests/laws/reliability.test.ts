import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { allowedFailureRateFit } from '@/shared/physics/joint-budget'
import { boardSurvival } from '@/shared/reliability/models/board-survival'
import { crowAmsaaGrowth, crowAmsaaTimeToReach } from '@/shared/reliability/growth/crow-amsaa'
import { duaneGrowth } from '@/shared/reliability/growth/duane'
import { unitHoursToShow } from '@/shared/reliability/demonstration/demonstration'
import { meanTimeLowerBound } from '@/shared/reliability/demonstration/mean-time-bounds'
import { medianRanks } from '@/shared/reliability/weibull/median-ranks'
import { equivalentCycles } from '@/shared/reliability/models/mixed-swings'
import { NORRIS_LANDZBERG, norrisLandzberg } from '@/shared/reliability/models/norris-landzberg'
import { successRunUnits, unitsToTest } from '@/shared/reliability/demonstration/success-run'
import { weibullByLikelihood } from '@/shared/reliability/weibull/weibull-likelihood'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const model = { name: 'law', edition: '', source: { cite: 'law', how: 'computed' }, caution: '' } as const

test('the allowed rate per joint gives back the survival it was allowed for', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 50_000 }),
      number(0.1, 50),
      number(0.01, 0.9999),
      (joints, serviceYears, survival) => {
        const fit = allowedFailureRateFit({ joints, serviceYears, survival })
        const found = boardSurvival([{ joints, rate: { fit, model } }], serviceYears)
        expect(found.survival).toBeCloseTo(survival, 10)
      },
    ),
  )
})

test('more joints, more years or a higher rate never help a board', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 9999 }), number(0.1, 40), number(0, 5), (joints, years, fit) => {
      const survival = (n: number, y: number, rate: number): number =>
        boardSurvival([{ joints: n, rate: { fit: rate, model } }], y).survival
      const base = survival(joints, years, fit)
      expect(survival(joints + 1, years, fit)).toBeLessThanOrEqual(base)
      expect(survival(joints, years * 1.1, fit)).toBeLessThanOrEqual(base)
      expect(survival(joints, years, fit + 0.1)).toBeLessThan(base)
    }),
  )
})

describe('thermal cycles', () => {
  const cycle = fc.record({
    swingK: number(5, 200),
    maximumC: number(-20, 150),
    cyclesPerDay: number(0.1, 100),
    dwellMin: number(1, 700),
  })

  test('there and back cancel, and a test like the use accelerates nothing', () => {
    fc.assert(
      fc.property(cycle, cycle, fc.constantFrom(...NORRIS_LANDZBERG), (one, other, constants) => {
        const there = norrisLandzberg(constants, { test: one, use: other }).factor
        const back = norrisLandzberg(constants, { test: other, use: one }).factor
        expect(there * back).toBeCloseTo(1, 9)
        expect(norrisLandzberg(constants, { test: one, use: one }, 'dwell').factor).toBeCloseTo(1, 12)
      }),
    )
  })

  test('a wider, hotter or slower test accelerates more', () => {
    fc.assert(
      fc.property(
        cycle,
        cycle,
        number(1.01, 2),
        fc.constantFrom(...NORRIS_LANDZBERG),
        (one, use, more, constants) => {
          const factor = (changed: Partial<typeof one>): number =>
            norrisLandzberg(constants, { test: { ...one, ...changed }, use }).factor
          const base = factor({})
          expect(factor({ swingK: one.swingK * more })).toBeGreaterThan(base)
          expect(factor({ maximumC: one.maximumC + more })).toBeGreaterThan(base)
          expect(factor({ cyclesPerDay: one.cyclesPerDay * more })).toBeLessThan(base)
        },
      ),
    )
  })

  test('cycles of the reference swing count as themselves', () => {
    fc.assert(
      fc.property(number(1, 200), number(0, 1e5), (swingK, cycles) => {
        expect(equivalentCycles([{ swingK, cycles }], swingK)).toBeCloseTo(cycles, 6)
      }),
    )
  })
})

describe('demonstration', () => {
  test('after just the hours asked for, the bound is just the rate to be shown', () => {
    fc.assert(
      fc.property(
        number(0.01, 1000),
        number(0.05, 0.99),
        fc.integer({ min: 0, max: 20 }),
        (fit, confidence, failures) => {
          const unitHours = unitHoursToShow(fit, { confidence, failuresAllowed: failures })
          const bound = meanTimeLowerBound({ failures, unitHours, endedBy: 'time' }, confidence)
          expect(1e9 / bound / fit).toBeCloseTo(1, 8)
        },
      ),
    )
  })

  test('a higher claim, or a failure allowed, needs more units', () => {
    fc.assert(
      fc.property(
        number(0.5, 0.99),
        number(0.5, 0.99),
        fc.integer({ min: 0, max: 4 }),
        (reliability, confidence, allowed) => {
          const claim = { reliability, confidence }
          expect(unitsToTest(claim, allowed + 1)).toBeGreaterThan(unitsToTest(claim, allowed))
          const higher = { ...claim, reliability: reliability + (1 - reliability) / 2 }
          expect(successRunUnits(higher)).toBeGreaterThanOrEqual(successRunUnits(claim))
        },
      ),
    )
  })
})

describe('life data', () => {
  const lives = fc.uniqueArray(fc.integer({ min: 1, max: 5000 }), { minLength: 3, maxLength: 25 })

  test('the likelihood fit scales with the unit of the lives and keeps its shape', () => {
    fc.assert(
      fc.property(
        lives,
        fc.uniqueArray(fc.integer({ min: 1, max: 5000 }), { maxLength: 10 }),
        (failures, suspensions) => {
          fc.pre(Math.max(...failures) > 1.05 * Math.min(...failures))
          const fit = weibullByLikelihood({ failures, suspensions })
          const inMinutes = weibullByLikelihood({
            failures: failures.map((life) => life * 60),
            suspensions: suspensions.map((life) => life * 60),
          })
          expect(inMinutes.shape / fit.shape).toBeCloseTo(1, 7)
          expect(inMinutes.scale / fit.scale).toBeCloseTo(60, 4)
        },
      ),
    )
  })

  test('no nearby shape or scale is likelier', () => {
    fc.assert(
      fc.property(lives, (failures) => {
        fc.pre(Math.max(...failures) > 1.05 * Math.min(...failures))
        const { shape, scale, logLikelihood } = weibullByLikelihood({ failures })
        const at = (b: number, e: number): number =>
          failures.reduce((sum, t) => sum + Math.log(b / e) + (b - 1) * Math.log(t / e) - (t / e) ** b, 0)
        for (const [b, e] of [
          [1.01, 1],
          [0.99, 1],
          [1, 1.01],
          [1, 0.99],
        ] as const)
          expect(at(shape * b, scale * e)).toBeLessThanOrEqual(logLikelihood + 1e-9)
      }),
    )
  })

  test('ranks rise, lie between 0 and 1, and those above a suspension rise by more', () => {
    fc.assert(
      fc.property(
        lives,
        fc.array(fc.integer({ min: 1, max: 5000 }), { maxLength: 10 }),
        (failures, suspensions) => {
          const ranks = medianRanks({ failures, suspensions })
          expect(ranks).toHaveLength(failures.length)
          ranks.forEach(({ shareFailed }, index) => {
            expect(shareFailed).toBeGreaterThan(index === 0 ? 0 : ranks[index - 1]!.shareFailed)
            expect(shareFailed).toBeLessThan(1)
          })
        },
      ),
    )
  })

  test('growth does not depend on the unit of time, and its target is reached when it says', () => {
    fc.assert(
      fc.property(lives, (times) => {
        const rising = [...times].sort((one, other) => one - other)
        const fit = crowAmsaaGrowth(rising, { estimate: 'maximum likelihood' })
        const scaled = crowAmsaaGrowth(
          rising.map((time) => time * 60),
          { estimate: 'maximum likelihood' },
        )
        expect(scaled.shape).toBeCloseTo(fit.shape, 9)
        expect(duaneGrowth(rising.map((time) => time * 60)).growthSlope).toBeCloseTo(
          duaneGrowth(rising).growthSlope,
          7,
        )
        if (fit.shape > 0.99) return
        const reached = crowAmsaaTimeToReach(fit, fit.cumulativeMeanTime)
        expect(reached / rising.at(-1)!).toBeCloseTo(1, 5)
      }),
    )
  })
})
