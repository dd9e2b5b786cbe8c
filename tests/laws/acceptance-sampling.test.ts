import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ACCEPTANCE_QUALITY_LIMITS } from '@/shared/statistics/sampling/acceptance-quality-limit'
import { acceptanceOfLot, acceptanceOfProcess } from '@/shared/statistics/sampling/attribute-operating-curve'
import { fractionAtAcceptance } from '@/shared/statistics/sampling/attribute-operating-curve'
import { CODE_LETTERS, codeLetterFor, INSPECTION_LEVELS } from '@/shared/statistics/sampling/code-letters'
import { doublePlanPerformance } from '@/shared/statistics/sampling/double-operating-curve'
import { doublePlan } from '@/shared/statistics/sampling/double-plan'
import { outgoingQuality, outgoingQualityLimit } from '@/shared/statistics/sampling/outgoing-quality'
import { SEVERITIES, singlePlanForLot } from '@/shared/statistics/sampling/single-plan'
import { inspectionAfter, nextInspection, type SeriesEvent } from '@/shared/statistics/sampling/switching'
import { MIL_STD_105E } from '@/shared/statistics/sampling/switching-rules'
import { acceptanceByVariables } from '@/shared/statistics/sampling/variables-plan'
import {
  zeroAcceptanceSample,
  zeroAcceptanceSampleFromLot,
} from '@/shared/statistics/sampling/zero-acceptance'

const fraction = fc.double({ min: 0, max: 1, noNaN: true })
const rising = fc.tuple(fraction, fraction).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const)
const plan = fc
  .record({ sampleSize: fc.integer({ min: 1, max: 500 }), pick: fc.nat(20) })
  .map(({ sampleSize, pick }) => ({ sampleSize, accept: Math.min(pick, sampleSize - 1) }))
const lookup = fc.record({
  lotSize: fc.integer({ min: 2, max: 1_000_000 }),
  level: fc.constantFrom(...INSPECTION_LEVELS),
  limit: fc.constantFrom(...ACCEPTANCE_QUALITY_LIMITS),
  severity: fc.constantFrom(...SEVERITIES),
})

describe('an operating curve never rises as quality worsens', () => {
  test('single plan, process and lot', () => {
    fc.assert(
      fc.property(plan, rising, (plan, [better, worse]) => {
        expect(acceptanceOfProcess(plan, worse)).toBeLessThanOrEqual(
          acceptanceOfProcess(plan, better) + 1e-12,
        )
        const inLot = (share: number) => acceptanceOfLot(plan, 600, Math.round(600 * share))
        expect(inLot(worse)).toBeLessThanOrEqual(inLot(better) + 1e-12)
      }),
    )
  })
  test('double plan', () => {
    const double = fc
      .record({
        letter: fc.constantFrom(...CODE_LETTERS),
        limit: fc.constantFrom(...ACCEPTANCE_QUALITY_LIMITS),
        severity: fc.constantFrom(...SEVERITIES),
      })
      .map(({ letter, limit, severity }) => doublePlan(letter, limit, severity))
      .filter((plan) => plan !== undefined)
    fc.assert(
      fc.property(double, rising, (plan, [better, worse]) => {
        const before = doublePlanPerformance(plan, better)
        const after = doublePlanPerformance(plan, worse)
        expect(after.acceptance).toBeLessThanOrEqual(before.acceptance + 1e-12)
        expect(after.averageSample).toBeGreaterThanOrEqual(plan.firstSize)
        expect(after.averageSample).toBeLessThanOrEqual(plan.firstSize + plan.secondSize + 1e-9)
      }),
    )
  })
  test('variables plan', () => {
    const variables = fc.record({
      sampleSize: fc.integer({ min: 3, max: 200 }),
      acceptabilityConstant: fc.double({ min: 0.5, max: 3, noNaN: true }),
    })
    fc.assert(
      fc.property(variables, rising, (plan, [better, worse]) => {
        expect(acceptanceByVariables(plan, worse)).toBeLessThanOrEqual(
          acceptanceByVariables(plan, better) + 1e-12,
        )
      }),
    )
  })
})

describe('plans', () => {
  test('the curve read the other way leads back', () => {
    fc.assert(
      fc.property(plan, fc.double({ min: 0.001, max: 0.999, noNaN: true }), (plan, acceptance) => {
        expect(acceptanceOfProcess(plan, fractionAtAcceptance(plan, acceptance))).toBeCloseTo(acceptance, 10)
      }),
    )
  })
  test('acceptance is below rejection, and no sample exceeds its lot', () => {
    fc.assert(
      fc.property(lookup, (lookup) => {
        const found = singlePlanForLot(lookup)
        expect(found.accept).toBeLessThan(found.reject)
        expect(found.sampleSize).toBeLessThanOrEqual(lookup.lotSize)
        expect(found.everyUnit).toBe(found.sampleSize === lookup.lotSize)
        expect(found.letter).toBe(codeLetterFor(lookup.lotSize, lookup.level))
      }),
    )
  })
  test('what leaves is never worse than the limit, nor than what came', () => {
    fc.assert(
      fc.property(plan, fraction, (plan, incoming) => {
        const { averageOutgoing } = outgoingQuality(plan, 1_000_000, incoming)
        expect(averageOutgoing).toBeLessThanOrEqual(outgoingQualityLimit(plan).outgoingFraction + 1e-12)
        expect(averageOutgoing).toBeLessThanOrEqual(incoming)
      }),
    )
  })
  test('a sample without acceptance is the least that does it', () => {
    const tolerable = fc.double({ min: 1e-6, max: 0.5, noNaN: true })
    fc.assert(
      fc.property(tolerable, fc.double({ min: 0.5, max: 0.999, noNaN: true }), (tolerable, confidence) => {
        const sampleSize = zeroAcceptanceSample(tolerable, confidence)
        const chance = (n: number) => Math.exp(n * Math.log1p(-tolerable))
        expect(chance(sampleSize)).toBeLessThanOrEqual((1 - confidence) * (1 + 1e-9))
        if (sampleSize > 1) expect(chance(sampleSize - 1)).toBeGreaterThan((1 - confidence) * (1 - 1e-9))
      }),
    )
  })
  test('a lot asks for no larger sample than a process with the same share', () => {
    const lot = fc.record({ lotSize: fc.integer({ min: 2, max: 5000 }), pick: fc.nat() })
    fc.assert(
      fc.property(lot, fc.constantFrom(0.9, 0.95, 0.99), ({ lotSize, pick }, confidence) => {
        const defectives = 1 + (pick % (lotSize - 1))
        const fromLot = zeroAcceptanceSampleFromLot(lotSize, defectives, confidence)
        expect(fromLot).toBeLessThanOrEqual(zeroAcceptanceSample(defectives / lotSize, confidence))
      }),
    )
  })
})

describe('switching', () => {
  const event: fc.Arbitrary<SeriesEvent> = fc.oneof(
    {
      weight: 9,
      arbitrary: fc.record({
        kind: fc.constant('lot' as const),
        outcome: fc.constantFrom('accepted', 'accepted', 'accepted', 'accepted in the gap', 'rejected'),
        resubmitted: fc.boolean(),
        mayReduce: fc.boolean(),
        irregular: fc.boolean(),
      }),
    },
    { weight: 1, arbitrary: fc.constant({ kind: 'corrective action accepted' as const }) },
  )
  const series = fc.array(event, { maxLength: 60 })

  test('only the steps that the rules know are taken', () => {
    const known = new Set([
      'normal tightened',
      'normal reduced',
      'tightened normal',
      'tightened discontinued',
      'reduced normal',
      'discontinued tightened',
    ])
    fc.assert(
      fc.property(series, (history) => {
        let status = inspectionAfter([])
        for (const event of history) {
          const next = nextInspection(status, event, MIL_STD_105E)
          if (next.severity !== status.severity)
            expect(known).toContain(`${status.severity} ${next.severity}`)
          status = next
        }
        expect(inspectionAfter(history)).toEqual(status)
      }),
    )
  })
  test('a rejected lot never eases inspection', () => {
    fc.assert(
      fc.property(series, (history) => {
        const before = inspectionAfter(history).severity
        const after = inspectionAfter([
          ...history,
          { kind: 'lot', outcome: 'rejected', mayReduce: true },
        ]).severity
        const strictness = ['reduced', 'normal', 'tightened', 'discontinued']
        expect(strictness.indexOf(after)).toBeGreaterThanOrEqual(strictness.indexOf(before))
      }),
    )
  })
  test('lots offered again change nothing', () => {
    fc.assert(
      fc.property(series, (history) => {
        const without = history.filter((event) => event.kind !== 'lot' || !event.resubmitted)
        expect(inspectionAfter(history)).toEqual(inspectionAfter(without))
      }),
    )
  })
})
