import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { AGEING_METHODS } from '@/shared/materials/ageing-methods'
import { ageingEquivalence } from '@/shared/physics/ageing-equivalence'
import { contactAngleDeg, theoreticalForceMN, type ImmersedSpecimen } from '@/shared/physics/wetting-force'
import { wettingCurveMarks } from '@/shared/wetting/wetting-curve'
import { wettingTimeMax } from '@/shared/plan/limits/evaluation-solderability'
import { acceptableQualityLevel } from '@/shared/plan/parameters/evaluation-sampling'
import { boardFinish, boardFinishMin } from '@/shared/plan/parameters/finishes'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { planRisk, acceptanceUnder } from '@/shared/sampling/plan-risk'
import { platingThickness } from '@/shared/rules/evaluation/plating-thickness'
import { rotaryDipWettingTime } from '@/shared/rules/evaluation/rotary-dip-wetting-time'
import { outcomeOf, planForLot, type SamplingSettings } from '@/shared/sampling/sampling-plan'
import { toleranceShown } from '@/shared/plating/tolerance-shown'
import { VERDICTS, type Verdict } from '@/shared/rules/finding'
import { ACCEPTANCE_QUALITY_LIMITS } from '@/shared/statistics/sampling/acceptance-quality-limit'
import { INSPECTION_LEVELS } from '@/shared/statistics/sampling/code-letters'
import { findingOf, requirement, set } from '../rules/facts-builder'
import { boardPlan, lot, needed, rotaryDip, testOf, timer } from '../rules/lots-builder'

const seconds = fc.double({ min: 0.1, max: 6, noNaN: true })
const sample = fc.array(seconds, { minLength: 1, maxLength: 40 })
const worse = (a: Verdict, b: Verdict) => VERDICTS.indexOf(a) > VERDICTS.indexOf(b)

const dipped = (times: readonly number[], maxS: number, quantity = 200) =>
  findingOf(rotaryDipWettingTime, {
    values: [...boardPlan, set(acceptableQualityLevel, '2.5')],
    instruments: [timer],
    lots: [lot({ quantity, tests: [rotaryDip(times)] })],
    requirements: [requirement(wettingTimeMax, maxS, { relaxes: true })],
  }).verdict

describe('wetting times of a lot', () => {
  test('a longer time allowed never makes a lot worse', () => {
    fc.assert(
      fc.property(sample, seconds, seconds, (times, a, b) => {
        expect(worse(dipped(times, Math.max(a, b)), dipped(times, Math.min(a, b)))).toBe(false)
      }),
    )
  })
  test('one slower specimen never makes it better', () => {
    fc.assert(
      fc.property(sample, fc.nat(), fc.double({ min: 0, max: 5, noNaN: true }), (times, pick, slower) => {
        const at = pick % times.length
        const after = times.map((time, index) => (index === at ? time + slower : time))
        expect(worse(dipped(times, 2), dipped(after, 2))).toBe(false)
      }),
    )
  })
  test('what is found does not depend on the order of the rows', () => {
    fc.assert(
      fc.property(sample, (times) => {
        expect(dipped([...times].reverse(), 2)).toBe(dipped(times, 2))
      }),
    )
  })
  test('a sample that is too small is never accepted', () => {
    fc.assert(
      fc.property(fc.array(fc.constant(1), { minLength: 1, maxLength: 4 }), (times) => {
        expect(dipped(times, 2)).toBe('undetermined')
      }),
    )
  })
})

const settings = fc.record({
  scheme: fc.constantFrom('single', 'double', 'zero-acceptance'),
  level: fc.constantFrom(...INSPECTION_LEVELS),
  limit: fc.constantFrom('0.10', '0.25', '0.65', '1.0', '2.5', '4.0', '6.5', '10'),
  reducedWanted: fc.constant(false),
  zeroAcceptance: fc.record({
    fraction: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
    confidence: fc.double({ min: 0.5, max: 0.99, noNaN: true }),
  }),
}) as fc.Arbitrary<SamplingSettings>
const severity = fc.constantFrom('normal', 'tightened', 'reduced' as const)
const lotSize = fc.integer({ min: 1, max: 20_000 })
const RANK = { rejected: 0, open: 1, 'accepted in the gap': 2, accepted: 3 } as const

describe('sampling plans', () => {
  test('never ask for more than the lot, nor for nothing', () => {
    fc.assert(
      fc.property(lotSize, severity, settings, (size, state, asked) => {
        const plan = planForLot(size, state, asked)
        const max = plan.kind === 'double' ? plan.firstSize + plan.secondSize : plan.sampleSize
        expect(max).toBeGreaterThan(0)
        expect(max).toBeLessThanOrEqual(size)
      }),
    )
  })
  test('one more bad piece never turns an outcome to the better', () => {
    fc.assert(
      fc.property(
        lotSize,
        severity,
        settings,
        fc.nat(400),
        fc.nat(30),
        (size, state, asked, tested, nonconforming) => {
          const plan = planForLot(size, state, asked)
          if (plan.kind === 'variables') throw new Error('no variables plan was asked for')
          const rank = (found: number) => RANK[outcomeOf(plan, tested, found).decided ?? 'open']
          // With an incomplete sample "open" stands between; rejection can only come nearer.
          if (tested >= (plan.kind === 'double' ? plan.firstSize + plan.secondSize : plan.sampleSize))
            expect(rank(nonconforming + 1)).toBeLessThanOrEqual(rank(nonconforming))
          else if (outcomeOf(plan, tested, nonconforming).decided === 'rejected')
            expect(rank(nonconforming + 1)).toBe(RANK.rejected)
        },
      ),
    )
  })
  test('a rejected sample stays rejected, however many good pieces are tested after it', () => {
    fc.assert(
      fc.property(
        lotSize,
        severity,
        settings,
        fc.nat(300),
        fc.nat(30),
        (size, state, asked, more, nonconforming) => {
          const plan = planForLot(size, state, { ...asked, scheme: 'double' })
          if (plan.kind === 'variables') throw new Error('no variables plan was asked for')
          const first = plan.kind === 'double' ? plan.firstSize : plan.sampleSize
          if (outcomeOf(plan, first, nonconforming).decided !== 'rejected') return
          expect(outcomeOf(plan, first + more, nonconforming, nonconforming).decided).toBe('rejected')
        },
      ),
    )
  })
  test('accept a better process at least as readily', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true })
    fc.assert(
      fc.property(lotSize, severity, settings, share, share, (size, state, asked, a, b) => {
        const plan = planForLot(size, state, asked)
        const [good, nonconforming] = [Math.min(a, b), Math.max(a, b)]
        expect(acceptanceUnder(plan, good)).toBeGreaterThanOrEqual(
          acceptanceUnder(plan, nonconforming) - 1e-9,
        )
      }),
    )
  })
  test('a tightened plan never lets more pass than the normal one', () => {
    fc.assert(
      fc.property(lotSize, settings, (size, asked) => {
        const single = { ...asked, scheme: 'single' } as const
        const [normal, tightened] = (['normal', 'tightened'] as const).map((state) =>
          planForLot(size, state, single),
        )
        fc.pre(
          normal?.kind === 'single' &&
            !normal.everyUnit &&
            tightened?.kind === 'single' &&
            !tightened.everyUnit,
        )
        expect(planRisk(tightened!).oneInTen).toBeLessThanOrEqual(planRisk(normal!).oneInTen + 1e-9)
      }),
    )
  })
})

describe('plating', () => {
  const thickness = fc.double({ min: 1, max: 20, noNaN: true })
  const readings = fc.array(thickness, { minLength: 2, maxLength: 25 })
  const judged = (thicknesses: readonly number[], minUm: number) =>
    findingOf(platingThickness, {
      values: [
        ...boardPlan,
        set(lotsNeeded, [needed('bare board LX-41', 'bare board', 'plating-thickness')]),
        set(boardFinish, 'tin-lead-plated'),
        set(boardFinishMin, minUm),
      ],
      instruments: [timer],
      lots: [
        lot({
          tests: [
            testOf(
              'plating-thickness',
              thicknesses.map((thicknessUm, at) => ({ specimen: `s${at}`, place: 'track', thicknessUm })),
              { conditions: { deposit: 'tin-lead', technique: 'x-ray' } },
            ),
          ],
        }),
      ],
    }).verdict
  test('a smaller minimum never makes a lot fail that did not', () => {
    fc.assert(
      fc.property(readings, thickness, thickness, (values, a, b) => {
        if (judged(values, Math.max(a, b)) !== 'fails')
          expect(judged(values, Math.min(a, b))).not.toBe('fails')
      }),
    )
  })
  test('a lot is never passed with its mean below the minimum', () => {
    fc.assert(
      fc.property(readings, thickness, (values, min) => {
        const mean = values.reduce((sum, value) => sum + value, 0) / values.length
        fc.pre(mean < min - 1e-9)
        expect(judged(values, min)).toBe('fails')
      }),
    )
  })
  test('the number of readings said to be enough is the least that is', () => {
    const content = { coverage: 0.95, confidence: 0.95 }
    fc.assert(
      fc.property(
        fc.double({ min: 1.8, max: 6, noNaN: true }),
        fc.integer({ min: 2, max: 12 }),
        (room, count) => {
          const step = Math.sqrt((count - 1) / count)
          const values = Array.from({ length: count - (count % 2) }, (_, at) => [at % 2 === 0 ? -step : step])
          fc.pre(values.length >= 2)
          const shown = toleranceShown(values, { value: -room, side: 'lower' }, content)
          fc.pre(shown.outcome === 'too few' && shown.enough !== undefined)
          expect(shown.enough!).toBeGreaterThan(values.length)
        },
      ),
    )
  })
})

describe('wetting force', () => {
  const specimen = fc.record({
    perimeterMm: fc.double({ min: 1, max: 50, noNaN: true }),
    sectionMm2: fc.double({ min: 0.05, max: 20, noNaN: true }),
    depthMm: fc.double({ min: 0.1, max: 5, noNaN: true }),
    surfaceTensionNPerM: fc.double({ min: 0.3, max: 0.6, noNaN: true }),
    densityGPerMl: fc.double({ min: 6, max: 9, noNaN: true }),
  }) as fc.Arbitrary<ImmersedSpecimen>
  test('more pull is a smaller angle, and the greatest force is 0°', () => {
    fc.assert(
      fc.property(specimen, fc.double({ min: -0.9, max: 0.99, noNaN: true }), (one, share) => {
        const max = theoreticalForceMN(one)
        const pull = one.surfaceTensionNPerM * one.perimeterMm
        const force = max - (1 - share) * pull
        const angle = contactAngleDeg(force, one)!
        expect(contactAngleDeg(force + 0.001 * pull, one)!).toBeLessThan(angle)
        expect(Math.cos((angle * Math.PI) / 180)).toBeCloseTo(share, 6)
      }),
    )
  })
  test('turning the sign of the balance and of every reading changes no mark', () => {
    const force = fc.double({ min: -2, max: 2, noNaN: true })
    fc.assert(
      fc.property(fc.array(force, { minLength: 2, maxLength: 30 }), (forces) => {
        const readings = (sign: number) => ({
          count: forces.length,
          columns: {
            specimen: forces.map(() => 'w'),
            timeS: forces.map((_, at) => at * 0.25),
            forceMN: forces.map((value) => sign * value),
          },
        })
        const conditions = {
          perimeterMm: 2.5,
          sectionMm2: 0.5,
          depthMm: 4,
          immersionSpeedMmPerS: 20,
          surfaceTensionNPerM: 0.4,
          densityGPerMl: 8,
        }
        const { points: _, ...down } = wettingCurveMarks(readings(1), {
          ...conditions,
          forceSign: 'down-positive',
        })[0]!
        const { points: __, ...up } = wettingCurveMarks(readings(-1), {
          ...conditions,
          forceSign: 'up-positive',
        })[0]!
        expect(up).toEqual(down)
      }),
    )
  })
})

test('a warmer store makes an ageing stand for less time, whatever the method', () => {
  const celsius = fc.double({ min: -10, max: 60, noNaN: true })
  fc.assert(
    fc.property(fc.constantFrom(...Object.values(AGEING_METHODS)), celsius, celsius, (method, a, b) => {
      const at = (temperatureC: number) =>
        ageingEquivalence(method, { temperatureC, relativeHumidityPct: 50 })
      const [cool, warm] = [at(Math.min(a, b)), at(Math.max(a, b))]
      if (cool.kind !== 'span' || warm.kind !== 'span') return
      expect(warm.minMonths).toBeLessThanOrEqual(cool.minMonths * (1 + 1e-12))
      expect(warm.minMonths).toBeLessThanOrEqual(warm.maxMonths)
    }),
  )
})

test('the levels of quality offered are columns of the tables', () => {
  const { shape } = acceptableQualityLevel
  if (shape.kind !== 'field' || shape.column.kind !== 'choice') throw new Error('a choice is expected')
  for (const { value } of shape.column.options) expect(ACCEPTANCE_QUALITY_LIMITS).toContain(value)
})
