import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { storeReadingInterval } from '@/shared/plan/limits/control-storage'
import { addDays } from '@/shared/quantity/calendar'
import type { Log } from '@/shared/records/log'
import { boardStorageMonths, leadStorageMonths, storageTemperature } from '@/shared/plan/parameters/storage'
import type { Lot } from '@/shared/records/lot'
import { lotClocks } from '@/shared/storage/lot-clocks'
import { highestMonth, storeClimateRule } from '@/shared/rules/control/store-climate'
import { factsWith, findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { dippedOn, dipSpecified, lastingTimer, storedBoards } from '../lots-builder'
import { INSTRUMENT, logOf } from '../log-builder'
import { run } from '../record-builder'

const values = [
  set(boardStorageMonths, 6),
  set(leadStorageMonths, 12),
  dipSpecified,
  set(storageTemperature, 25),
]
const clocks = (lots: readonly Lot[], over: FactsInput = {}) =>
  lotClocks(factsWith({ values, lots, instruments: [lastingTimer], today: '2026-04-01', ...over })) ?? []

describe('the day by which a lot must be soldered', () => {
  // MIL-STD-2000 5.4.4, option 1: 120 days after a pass, so a test of 5 January stands until 5 May.
  test('is the earlier of the end of its time in store and of what its newest test stands for', () => {
    expect(clocks([storedBoards('A')])[0]).toMatchObject({
      solderBy: '2026-05-05',
      daysLeft: 34,
      storedUntil: '2026-07-01',
      state: 'in time',
    })
    const late = storedBoards('B', { tests: [dippedOn('2026-01-05'), dippedOn('2026-03-20')] })
    expect(clocks([late])[0]).toMatchObject({ solderBy: '2026-07-01', testedUntil: '2026-07-18' })
  })
  test('on that day there is no day left, and on the next the test is too old', () => {
    expect(clocks([storedBoards('A')], { today: '2026-05-05' })[0]).toMatchObject({
      daysLeft: 0,
      state: 'in time',
    })
    expect(clocks([storedBoards('A')], { today: '2026-05-06' })[0]).toMatchObject({
      daysLeft: -1,
      state: 'test too old',
    })
    expect(clocks([storedBoards('A')], { today: '2026-07-02' })[0]?.state).toBe('past its time in store')
  })
  test('a lot never tested has no day, and comes last', () => {
    const found = clocks([storedBoards('A', { tests: [] }), storedBoards('B')])
    expect(found.map(({ lot, state }) => [lot.code, state])).toEqual([
      ['B', 'in time'],
      ['A', 'never tested'],
    ])
  })
  test('a lot that failed its newest test has no day by which to solder it', () => {
    const failed = storedBoards('A', { tests: [dippedOn('2026-01-05'), dippedOn('2026-03-20', 2.6)] })
    expect(clocks([failed])[0]).toMatchObject({ state: 'failed its newest test', solderBy: undefined })
  })
  test('rejected lots and laminate have no clock', () => {
    const disposition = { verdict: 'reject', by: 'Q', on: '2026-02-01', reason: 'Dewetting.' } as const
    expect(clocks([storedBoards('A', { disposition }), storedBoards('B', { kind: 'laminate' })])).toEqual([])
  })
  test('nothing is told until the specification says how long they may wait', () => {
    expect(lotClocks(factsWith({ lots: [storedBoards('A')] }))).toBeUndefined()
  })
})

describe('first expired, first used', () => {
  const older = storedBoards('A')
  const newer = storedBoards('B', { receivedOn: '2026-02-01', tests: [dippedOn('2026-02-10')] })
  const run = (doneOn: string, lots: string) => ({
    id: doneOn,
    doneOn,
    worker: 'A',
    skill: 'machine-soldering',
    assemblies: 1,
    lots,
  })

  test('of two lots of one part the one that expires sooner is to be used first', () => {
    expect(clocks([newer, older]).map(({ lot, useFirst }) => [lot.code, useFirst])).toEqual([
      ['A', true],
      ['B', false],
    ])
    expect(clocks([older])[0]?.useFirst).toBe(false)
  })
  test('a lot that waited while one with more time was soldered is told so, until it is used up', () => {
    const passed = (days: readonly [string, string][]) =>
      clocks([newer, older], {
        records: { 'soldering-run': days.map(([day, lots]) => run(day, lots)) },
      }).find(({ lot }) => lot.code === 'A')?.passedOver
    expect(passed([['2026-03-02', 'B']])).toEqual([{ day: '2026-03-02', insteadLot: 'B' }])
    expect(
      passed([
        ['2026-03-01', 'A'],
        ['2026-03-02', 'B'],
      ]),
    ).toEqual([])
    expect(
      passed([
        ['2026-03-02', 'B'],
        ['2026-03-03', 'A'],
      ]),
    ).toHaveLength(1)
  })
})

describe('the climate of the store', () => {
  const calibrated = { ...INSTRUMENT, calibratedOn: '2025-12-01' }
  const judged = (over: FactsInput) =>
    findingOf(storeClimateRule, { values, instruments: [calibrated], ...over })
  const day = (month: number, temperatureC: number, relativeHumidityPct = 45) => ({
    at: `2026-0${month}-10T08:00:00Z`,
    temperatureC,
    relativeHumidityPct,
  })
  test('each month’s mean is held against the specified temperature: one warm day is no warm month', () => {
    const mild = [day(1, 20), { ...day(2, 30), at: '2026-02-01T08:00:00Z' }, day(2, 18), day(3, 21)]
    expect(judged({ logs: [logOf('store-climate', mild)] }).verdict).toBe('marginal')
    const warm = judged({ logs: [logOf('store-climate', [day(1, 20), day(2, 26)])] })
    expect(warm.verdict).toBe('fails')
    expect(warm.found).toContain('2026-02')
  })
  // By hand: the reading of 1 February at midnight is February’s; (20 + 22) / 2 = 21 and (30 + 18 + 21) / 3 = 23.
  test('a month begins with its first instant, and is the mean of its readings', () => {
    const at = (day: string) => Date.parse(`${day}T00:00:00Z`)
    const instants = ['2026-01-10', '2026-01-31', '2026-02-01', '2026-02-10', '2026-02-28'].map(at)
    expect(highestMonth({ instants, values: [20, 22, 30, 18, 21] })).toEqual({
      month: '2026-02',
      mean: 23,
      readings: 3,
    })
    expect(highestMonth({ instants, values: [28, 22, 30, 24, 21] })?.month).toBe('2026-01')
    expect(highestMonth({ instants: [], values: [] })).toBeUndefined()
  })
  test('the warmest month and the dampest are shown with their numbers, and mended where they fail', () => {
    const { parts } = judged({ logs: [logOf('store-climate', [day(1, 20, 70), day(2, 21)])] })
    expect(parts).toMatchObject([
      {
        verdict: 'meets',
        measured: { mean: { value: 21, unit: '°C' }, month: '2026-02', readings: { value: 1 } },
        margin: { found: 21, limit: 25 },
      },
      {
        verdict: 'fails',
        measured: { mean: { value: 70, unit: '% RH' }, month: '2026-01' },
        margin: { found: 70, limit: 60 },
      },
    ])
    expect(parts?.[0]?.remedy).toBeUndefined()
    expect(parts?.[1]?.remedy?.message).toContain('dry the store')
  })
  test('a warm month fails whatever became of its instrument; near the limit the instrument must be named', () => {
    const out = { ...calibrated, dueOn: '2026-01-05' }
    const warm = { logs: [logOf('store-climate', [day(1, 26)])], instruments: [out] }
    expect(judged(warm).verdict).toBe('fails')
    const unnamed = (temperatureC: number) =>
      judged({ logs: [{ ...logOf('store-climate', [day(1, temperatureC)]), instrumentId: null }] })
    expect(unnamed(20).verdict).toBe('meets')
    expect(unnamed(24.9)).toMatchObject({ verdict: 'undetermined', margin: { found: 24.9, limit: 25 } })
  })
  test('only boards and components that may still be used are asked for', () => {
    const storage = { temperatureC: 31, relativeHumidityPct: 50, packing: 'open' }
    const disposition = { verdict: 'reject', by: 'Q', on: '2026-02-01', reason: 'Dewetting.' } as const
    expect(judged({ lots: [storedBoards('A', { storage, disposition })] }).verdict).toBe('not applicable')
    expect(judged({ lots: [storedBoards('B', { storage, kind: 'laminate' })] }).verdict).toBe(
      'not applicable',
    )
  })
  test('a log without readings is no log of the store', () => {
    expect(judged({ logs: [logOf('store-climate', [])] }).verdict).toBe('not applicable')
  })
  test('a damp receipt fails as a hot one does; a sound one is listed with what was stated', () => {
    const damp = storedBoards('A', {
      storage: { temperatureC: 22, relativeHumidityPct: 75, packing: 'open' },
    })
    expect(judged({ lots: [damp] })).toMatchObject({ verdict: 'fails', margin: { found: 75, limit: 60 } })
    const sound = kept(readOn('2026-01-06', '2026-01-13')).parts?.find(({ about }) => about?.['lot'] === 'A')
    expect(sound).toMatchObject({
      verdict: 'meets',
      measured: { temperature: { value: 22, unit: '°C' }, humidity: { value: 50, unit: '% RH' } },
    })
  })
  test('a damp store fails by common practice', () => {
    expect(judged({ logs: [logOf('store-climate', [day(1, 20, 70)])] }).verdict).toBe('fails')
  })
  // Read once a week at least: common practice, no published source.
  const readOn = (...days: readonly string[]) =>
    logOf(
      'store-climate',
      days.map((one) => ({ at: `${one}T08:00:00Z`, temperatureC: 20, relativeHumidityPct: 45 })),
    )
  const kept = (log: Log, over: FactsInput = {}) =>
    judged({ lots: [storedBoards('A')], logs: [log], today: '2026-01-20', ...over })
  test('how a lot was received is not how it was kept: the store is read while it waits', () => {
    expect(judged({ lots: [storedBoards('A')], today: '2026-01-20' }).verdict).toBe('undetermined')
    expect(kept(readOn('2026-01-06', '2026-01-13')).verdict).toBe('meets')
    const lapsed = kept(readOn('2026-01-06', '2026-01-13'), { today: '2026-01-21' })
    expect(lapsed.verdict).toBe('undetermined')
    expect(lapsed.found).toContain('not read from 2026-01-13 to 2026-01-21 while A waited')
    expect(kept(readOn('2026-01-09', '2026-01-16')).verdict).toBe('undetermined')
    expect(kept(readOn('2025-12-02')).verdict).toBe('undetermined')
    const hot = storedBoards('A', { storage: { temperatureC: 31, relativeHumidityPct: 50, packing: 'open' } })
    expect(judged({ lots: [hot] })).toMatchObject({ verdict: 'fails', margin: { found: 31, limit: 25 } })
  })
  test('one reading on the day of receipt stands for a week, not for the months after', () => {
    expect(kept(readOn('2026-01-01'), { today: '2026-01-08' }).verdict).toBe('meets')
    expect(kept(readOn('2026-01-01'), { today: '2026-06-30' }).verdict).toBe('undetermined')
    const monthly = [requirement(storeReadingInterval, 31, { relaxes: true })]
    expect(kept(readOn('2026-01-01'), { today: '2026-01-30', requirements: monthly }).verdict).toBe('meets')
  })
  test('what is soldered waits no longer', () => {
    const runs = { 'soldering-run': [run(10, { doneOn: '2026-01-14', lots: 'A' })] }
    expect(kept(readOn('2026-01-06', '2026-01-13'), { today: '2026-06-30', records: runs }).verdict).toBe(
      'meets',
    )
  })
  test('a reading by an instrument that had run out then is none', () => {
    const out = { ...calibrated, dueOn: '2026-01-10' }
    const finding = kept(readOn('2026-01-06', '2026-01-13'), { instruments: [out] })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.parts?.[0]?.found).toContain('proves nothing: I-1 was due on 2026-01-10')
    const unnamed = { ...readOn('2026-01-06', '2026-01-13'), instrumentId: null }
    expect(kept(unnamed, { instruments: [] }).verdict).toBe('meets')
  })
  test('law: a reading taken away never makes the store meet', () => {
    const days = fc.uniqueArray(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 12 })
    const verdictOf = (some: readonly number[]) =>
      kept(readOn(...some.toSorted((a, b) => a - b).map((one) => addDays('2025-12-28', one)))).verdict
    fc.assert(
      fc.property(days, fc.nat(), (some, at) => {
        const less = some.toSpliced(at % some.length, 1)
        if (less.length === 0 || verdictOf(some) === 'meets') return
        expect(verdictOf(less)).not.toBe('meets')
      }),
      { numRuns: 60 },
    )
  })
  test('nothing in store and nothing logged: nothing is asked', () => {
    expect(judged({}).verdict).toBe('not applicable')
  })
})
