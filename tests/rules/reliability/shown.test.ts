import { describe, expect, test } from 'vitest'
import { lifeCyclesNeeded, lifeTestAsked } from '@/shared/plan/parameters/assessment-proof'
import { survivalTarget, surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { serviceYears } from '@/shared/plan/parameters/programme'
import { NO_RECORDS } from '@/shared/records/programme-records'
import type { RecordOf } from '@/shared/records/record-kinds'
import {
  boardHoursStillToServe,
  fieldGrowth,
  fieldTimeline,
  returnsByMonth,
} from '@/shared/reliability/field-shown'
import { growthShown } from '@/shared/reliability/growth-shown'
import { lifeTestsShown, successRun } from '@/shared/reliability/life-tests-shown'
import { programmeTarget } from '@/shared/reliability/programme-target'
import { rollUp } from '@/shared/reliability/roll-up'
import { fieldReturnsAgainstBudget } from '@/shared/rules/assessment/field-returns'
import { reliabilityDemonstrated } from '@/shared/rules/assessment/reliability-demonstrated'
import type { Facts } from '@/shared/rules/facts'
import { judge } from '@/shared/rules/rule'
import { reliabilityShown } from '@/shared/reliability/demonstration/success-run'
import reference from '@/tests/reference/statistics/reliability.json'
import { holes } from '@/tests/rules/record-builder'

const facts = (records: Record<string, readonly { readonly id: string }[]> = {}): Facts => ({
  values: new Map<string, unknown>([
    [leadHoles.key, [holes(500)]],
    [surfaceMountJoints.key, 0],
    [serviceYears.key, 20],
    [survivalTarget.key, 99],
    [lifeTestAsked.key, true],
    [lifeCyclesNeeded.key, 7300],
  ]),
  requirements: [],
  records: { ...NO_RECORDS, byKind: new Map(Object.entries(records)) },
  today: '2026-11-25',
})
const target = () => programmeTarget(facts()).target!

let next = 0
const specimen = (over: Partial<RecordOf<'life-test'>> = {}): RecordOf<'life-test'> => ({
  id: `s${++next}`,
  endedOn: '2026-04-01',
  test: 'LT-1',
  specimen: `S${next}`,
  joints: 500,
  cycles: 1000,
  failed: false,
  acceleration: 20,
  model: 'Norris–Landzberg',
  ...over,
})
const exposure = (from: string, to: string, boards: number, hoursEach: number) => ({
  id: `x${++next}`,
  from,
  to,
  boards,
  hoursEach,
  source: 'service reports',
})
const returned = (returnedOn: string, over: Partial<RecordOf<'field-return'>> = {}) => ({
  id: `r${++next}`,
  returnedOn,
  assembly: 'A-1',
  cause: 'solder-joint' as const,
  jointsFailed: 1,
  hours: undefined,
  joint: undefined,
  lesson: undefined,
  cost: undefined,
  ...over,
})

describe('the target', () => {
  // Series of joints at constant rates, 20 years of 8760 h: 57.36 FIT leave 0.99000 (computed apart from the program).
  test('99 % over 20 years leaves a board 57.36 FIT, and each of 500 joints a 500th of it', () => {
    const row = reference.survival.rows.find(({ system_FIT }) => system_FIT === 57.36)
    expect(row?.R_20y).toBeCloseTo(0.99, 5)
    expect(target().boardFit).toBeCloseTo(57.365, 2)
    expect(target().jointFit).toBeCloseTo(57.365 / 500, 4)
    expect(target()).toMatchObject({ joints: 500, lifeH: 175_200, lifeCycles: 7300, confidence: 0.9 })
  })

  test('names what is not specified yet', () => {
    const { missing } = programmeTarget({ values: new Map(), requirements: [] })
    expect(missing).toEqual([
      leadHoles.label,
      surfaceMountJoints.label,
      serviceYears.label,
      survivalTarget.label,
    ])
  })
})

describe('life tests', () => {
  // NIST/SEMATECH e-Handbook 8.4.1.3: ten failures, ten units taken out at 500 h: 606.5280 and 1.7208.
  test('are fitted test by test, with the handbook’s shape and scale', () => {
    const { failures, printed } = reference.weibullCensored
    const rows = [
      ...failures.map((cycles) => specimen({ cycles, failed: true })),
      ...Array.from({ length: 10 }, () => specimen({ cycles: 500 })),
      specimen({ test: 'LT-2' }),
    ]
    const [first, second] = lifeTestsShown(rows, target())
    expect(first?.fit?.shape).toBeCloseTo(printed.beta, 4)
    expect(Math.abs((first?.fit?.scale ?? 0) - printed.eta)).toBeLessThan(0.001)
    expect(first?.ranks).toHaveLength(10)
    expect(second).toMatchObject({ test: 'LT-2', failures: 0, fit: undefined, ranks: [] })
    // Weibayes without a failure: η ≥ (Σ t^β ÷ −ln(1 − C))^(1/β), by hand at β = 2, one specimen.
    expect(second?.scaleBound?.scale).toBeCloseTo(1000 / Math.sqrt(-Math.log(0.1)), 6)
  })

  test('a success run counts who ran a life, and brings specimens to boards', () => {
    const survived = Array.from({ length: 22 }, () => specimen())
    const run = successRun([...survived, specimen({ cycles: 100 })], target())
    expect(run).toMatchObject({ specimens: 22, failed: 0, jointsEach: 500 })
    // Success-run theorem: 22 without a failure show 0.9 with 90 % confidence (0.1^(1/22) = 0.9006).
    expect(run?.specimenSurvival).toBeCloseTo(reliabilityShown(22, 0.9), 10)
    expect(run?.specimenSurvival).toBeCloseTo(0.9006, 4)
    const half = survived.map((row) => ({ ...row, joints: 250 }))
    expect(successRun(half, target())?.boardSurvival).toBeCloseTo(0.1 ** (2 / 22), 10)
  })

  test('a specimen that failed after a whole life outlived it; one that failed before did not', () => {
    const late = specimen({ failed: true, cycles: 400 })
    const early = specimen({ failed: true, cycles: 300 })
    expect(successRun([late, early], target())).toMatchObject({ specimens: 2, failed: 1 })
  })

  test('without a service life in cycles there is no success run', () => {
    expect(successRun([specimen()], { ...target(), lifeCycles: undefined })).toBeUndefined()
  })
})

describe('growth', () => {
  // NIST/SEMATECH e-Handbook 8.4.5.2: ended at 1500 h, 310.234 h (from memory, recomputed).
  test('the handbook’s ten failures: 310.234 h at the end', () => {
    const { times, endedAt, value } = reference.powerLaw
    const { growth } = growthShown(times, endedAt, 0.9)
    expect(growth?.crow.currentMeanTime).toBeCloseTo(value.MTBF_end, 3)
    expect(growth?.duane).toBeDefined()
  })

  test('is not fitted to one failure; two at one moment are taken', () => {
    expect(growthShown([5], 10, 0.9).why).toContain('two failures at least; 1 is on record')
    // β = n/Σ ln(T/t) = 2/(2·ln 2) by hand.
    expect(growthShown([5, 5], 10, 0.9).growth?.crow.shape).toBeCloseTo(1 / Math.log(2), 12)
    expect(growthShown([10, 10], 10, 0.9).why).toContain('at the end')
  })
})

describe('service', () => {
  const exposures = [
    exposure('2026-01-01', '2026-01-31', 1000, 744),
    exposure('2026-02-01', '2026-02-28', 1000, 672),
  ]

  // Garwood: with 90 % confidence one-sided, no event has an upper bound of −ln 0.1, one event a lower of −ln 0.9.
  test('bounds by the end of each period', () => {
    const [january, february] = fieldTimeline([returned('2026-02-10')], exposures, target())
    expect(january).toMatchObject({ on: '2026-01-31', boardHours: 744_000, failed: 0, lower: 0 })
    expect(january?.upper).toBeCloseTo((-Math.log(0.1) / 744_000) * 1e9, 6)
    expect(february).toMatchObject({ boardHours: 1_416_000, failed: 1 })
    expect(february?.lower).toBeCloseTo((-Math.log(0.9) / 1_416_000) * 1e9, 6)
    // One event: upper 3.88972 at 90 % (chi-square with 4 degrees of freedom, 7.77944, halved).
    expect(february?.upper).toBeCloseTo((3.88972 / 1_416_000) * 1e9, 1)
  })

  test('the last point says what the finding says', () => {
    const returns = [
      returned('2026-02-10'),
      returned('2026-03-09'),
      returned('2026-02-01', { cause: 'handling' }),
    ]
    const last = fieldTimeline(returns, exposures, target()).at(-1)
    const finding = judge(
      fieldReturnsAgainstBudget,
      facts({ 'field-return': returns, 'field-exposure': exposures }),
    )
    expect(finding.margin?.limit).toBeCloseTo(target().boardFit, 9)
    expect([last?.rate, last?.lower]).toContain(finding.margin?.found)
  })

  test('what is still to be served would show the budget, and no less would', () => {
    const more = boardHoursStillToServe({ boardHours: 1e6, failed: 1 }, target())
    const upperAfter = (hours: number) =>
      fieldTimeline(
        [returned('2026-01-05')],
        [exposure('2026-01-01', '2026-01-31', 1, 1e6 + hours)],
        target(),
      )[0]?.upper
    expect(upperAfter(more)).toBeCloseTo(target().boardFit, 6)
    expect(upperAfter(more * 0.99)).toBeGreaterThan(target().boardFit)
  })

  test('no exposure, no rate', () => {
    expect(fieldTimeline([returned('2026-01-05')], [], target())).toEqual([])
  })

  test('months without a return between two with one are there', () => {
    const rows = returnsByMonth([returned('2025-12-30', { cost: 180 }), returned('2026-02-01')])
    expect(rows.map(({ month }) => month)).toEqual(['2025-12', '2026-01', '2026-02'])
    expect(rows[0]).toMatchObject({ cost: 180 })
    expect(rows[1]?.counts.size).toBe(0)
    expect(returnsByMonth([])).toEqual([])
  })

  test('a return half through a period has half its hours behind it', () => {
    const fleet = [exposure('2026-01-01', '2026-01-30', 100, 720)]
    const { growth } = fieldGrowth([returned('2026-01-15'), returned('2026-01-30')], fleet, 0.9)
    expect(growth).toMatchObject({ times: [36_000, 72_000], end: 72_000 })
  })
})

describe('returns by month', () => {
  const back = (returnedOn: string): RecordOf<'field-return'> => ({
    id: `b${++next}`,
    returnedOn,
    assembly: 'A-1',
    cause: 'solder-joint',
    jointsFailed: 1,
    hours: undefined,
    joint: undefined,
    lesson: undefined,
    cost: undefined,
  })
  test('a short gap is filled, a date far off does not fill a page', () => {
    expect(returnsByMonth([back('2026-03-04'), back('2026-01-02')]).map(({ month }) => month)).toEqual([
      '2026-01',
      '2026-02',
      '2026-03',
    ])
    expect(returnsByMonth([back('2026-01-02'), back('9999-12-31')]).map(({ month }) => month)).toEqual([
      '2026-01',
      '9999-12',
    ])
  })
})

describe('the roll-up', () => {
  const specimens = [...Array.from({ length: 39 }, () => specimen()), specimen({ failed: true })]
  const rows = rollUp(target(), {
    predicted: 40,
    specimens,
    returns: [],
    exposures: [exposure('2026-01-01', '2026-01-31', 1000, 744)],
  })

  test('keeps what is assumed and what is shown apart', () => {
    expect(rows.map(({ from, basis }) => [from, basis])).toEqual([
      ['prediction', 'assumed'],
      ['life test', 'shown'],
      ['service', 'shown'],
    ])
    expect(rows[0]).toMatchObject({ status: 'within the target', lower: undefined, toShow: undefined })
  })

  test('agrees with the finding on the life test, failures of a life brought to a rate', () => {
    const finding = judge(reliabilityDemonstrated, facts({ 'life-test': specimens }))
    const upper = rows[1]!.upper * 1e-9 * target().lifeH
    expect(upper).toBeCloseTo(finding.margin!.found, 9)
    expect(rows[1]!.survival).toBeCloseTo(Math.exp(-finding.margin!.found), 9)
  })

  test('says how much more would show it, and that it then is shown', () => {
    const { toShow } = rows[1]!
    expect(rows[1]?.status).toBe('not shown yet')
    const more = specimen({ joints: Math.ceil(toShow!.amount), acceleration: 7.3 })
    const after = rollUp(target(), {
      predicted: undefined,
      specimens: [...specimens, more],
      returns: [],
      exposures: [],
    })
    expect(after[0]).toMatchObject({ from: 'life test', status: 'within the target', toShow: undefined })
  })
})
