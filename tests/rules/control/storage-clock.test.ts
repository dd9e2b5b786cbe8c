import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { reaffirmationAgeMax } from '@/shared/plan/limits/evaluation-storage'
import { boardStorageMonths, leadStorageMonths } from '@/shared/plan/parameters/storage'
import { addDays } from '@/shared/quantity/calendar'
import type { Lot } from '@/shared/records/lot'
import { storageClockRule } from '@/shared/rules/control/storage-clock'
import { startOfStorage } from '@/shared/storage/storage-time'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { boardConditions, dippedOn, dipSpecified, lastingTimer, storedBoards } from '../lots-builder'

const boards = (over: Partial<Lot> = {}): Lot => storedBoards('B-07', { id: 'lot-1', ...over })
const run = (doneOn: string, lots: string | undefined = 'B-07') => ({
  id: `run-${doneOn}`,
  doneOn,
  worker: 'A. Ward',
  skill: 'machine-soldering',
  assemblies: 10,
  lots,
})
const judged = (lot: Lot | readonly Lot[], days: readonly string[], over: FactsInput = {}, boardMonths = 6) =>
  findingOf(storageClockRule, {
    values: [set(boardStorageMonths, boardMonths), set(leadStorageMonths, 12), dipSpecified],
    instruments: [lastingTimer],
    lots: Array.isArray(lot) ? lot : [lot as Lot],
    records: { 'soldering-run': days.map((day) => run(day)) },
    ...over,
  })

describe('the storage clock', () => {
  // MIL-STD-2000 5.4.4, option 1: soldered within 120 days after a pass. 5 January + 120 days = 5 May.
  test('the 120th day after the test is inside, the 121st is not', () => {
    expect(judged(boards(), ['2026-05-05']).verdict).toBe('marginal')
    const late = judged(boards(), ['2026-05-06'])
    expect(late.verdict).toBe('fails')
    expect(late.margin).toMatchObject({ found: 121, limit: 120 })
    expect(judged(boards(), ['2026-02-01']).verdict).toBe('meets')
  })
  test('a test in between starts that clock anew, but not the storage the specification allows', () => {
    const again = boards({ tests: [dippedOn('2026-01-05'), dippedOn('2026-05-01')] })
    expect(judged(again, ['2026-05-06']).verdict).toBe('meets')
    expect(judged(again, ['2026-07-01']).verdict).toBe('marginal')
    expect(judged(again, ['2026-07-02']).verdict).toBe('fails')
  })
  test('a test made after soldering proves nothing for what was soldered before', () => {
    const finding = judged(boards(), ['2026-01-04'])
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toMatch(/before it had passed any solderability test/)
    expect(judged(boards({ tests: [] }), ['2026-02-01']).verdict).toBe('fails')
    expect(
      judged(boards({ tests: [dippedOn('2026-01-05', 1.2, { method: 'receiving-check' })] }), ['2026-02-01'])
        .verdict,
    ).toBe('fails')
  })
  // MIL-STD-2000 5.4.4, option 1: within 120 days after *passing*. A failed test starts no clock, it stops the lot.
  test('a failed test starts nothing anew, and what is soldered after it fails', () => {
    const failed = boards({ tests: [dippedOn('2026-01-05'), dippedOn('2026-05-01', 2.4)] })
    expect(judged(failed, ['2026-04-20']).verdict).toBe('meets')
    const after = judged(failed, ['2026-05-02'])
    expect(after.verdict).toBe('fails')
    expect(after.found).toMatch(/although it failed the test of 2026-05-01/)
    expect(judged(boards({ tests: [dippedOn('2026-01-05', 2.4)] }), ['2026-02-01']).verdict).toBe('fails')
  })
  test('a test under other conditions, or by a timer out of calibration, starts nothing anew', () => {
    const hotter = { conditions: { ...boardConditions, bathTemperatureC: 260 } }
    const again = (over: object) =>
      judged(boards({ tests: [dippedOn('2026-01-05'), dippedOn('2026-05-01', 1.2, over)] }), ['2026-05-06'])
    expect(again({}).verdict).toBe('meets')
    expect(again(hotter).verdict).toBe('fails')
    expect(again({ instrumentId: null }).verdict).toBe('fails')
  })
  test('a specimen found bad counts as passed only where quality accepted the lot with it in view', () => {
    const slow = { tests: [dippedOn('2026-01-05', 2.4)] }
    const disposed = (on: string) => ({
      disposition: {
        verdict: 'accept' as const,
        by: 'C. Hale',
        on,
        reason: 'One of 50, accepted by the plan.',
      },
    })
    expect(judged(boards({ ...slow, ...disposed('2026-01-06') }), ['2026-02-01']).verdict).toBe('meets')
    expect(judged(boards({ ...slow, ...disposed('2026-01-04') }), ['2026-02-01']).verdict).toBe('fails')
  })
  test('a run that names no lot is not passed over', () => {
    const records = { 'soldering-run': [run('2026-02-01'), { ...run('2026-02-02'), lots: undefined }] }
    const finding = judged(boards(), [], { records })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('2026-02-02')
  })
  // ISO 8601: week 27 of 2025 begins on Monday 30 June 2025; six months end on 30 December.
  test('a date code of year and week starts the clock before receipt', () => {
    const coded = boards({ dateCode: '2527', receivedOn: '2025-12-01', tests: [dippedOn('2025-12-05')] })
    expect(judged(coded, ['2025-12-30']).verdict).toBe('marginal')
    expect(judged(coded, ['2025-12-31']).verdict).toBe('fails')
  })
  // Week 14 of 1998 began on Monday 30 March 1998: a part of that code is not fresh on the day it is bought.
  test('a date code that would lie in the future is old stock of the last century', () => {
    const old = boards({ dateCode: '9814', receivedOn: '2026-01-01' })
    expect(startOfStorage(old)).toBe('1998-03-30')
    expect(judged(old, ['2026-02-01']).verdict).toBe('fails')
    // A code of weeks after receipt is a slip, not a part of 1926.
    expect(startOfStorage(boards({ dateCode: '2640', receivedOn: '2026-01-01' }))).toBe('2026-01-01')
    expect(startOfStorage(boards({ dateCode: '2661' }))).toBe('2026-01-01')
  })
  test('components go by their own months', () => {
    const parts = boards({ kind: 'component', part: 'T1', tests: [dippedOn('2026-09-01')] })
    expect(judged(parts, ['2026-09-10']).verdict).toBe('meets')
  })
  test('a rejected lot that was soldered fails', () => {
    const disposition = { verdict: 'reject' as const, by: 'C. Hale', on: '2026-01-06', reason: 'dewetting' }
    expect(judged(boards({ disposition }), ['2026-02-01']).verdict).toBe('fails')
  })
  test('runs without lots, and lots not on file, are undetermined', () => {
    expect(judged(boards(), []).verdict).toBe('undetermined')
    expect(judged([], ['2026-02-01']).verdict).toBe('undetermined')
    expect(judged(boards({ kind: 'consumable' }), ['2026-02-01']).verdict).toBe('undetermined')
  })
  test('lots are found whatever their case, and several may be named', () => {
    const lots = [boards(), boards({ id: 'lot-2', code: 'B-08', tests: [] })]
    const records = { 'soldering-run': [run('2026-02-01', ' b-07 ,B-08')] }
    const finding = judged(lots, [], { records })
    expect(finding.parts).toHaveLength(2)
    expect(finding.verdict).toBe('fails')
  })
  test('a customer may ask for fewer days', () => {
    const requirements = [requirement(reaffirmationAgeMax, 20)]
    expect(judged(boards(), ['2026-02-01'], { requirements }).verdict).toBe('fails')
  })
  test('law: soldering earlier (after the test) never makes it worse', () => {
    const order = ['meets', 'marginal', 'undetermined', 'fails']
    fc.assert(
      fc.property(fc.nat(300), fc.nat(300), (a, b) => {
        const at = (days: number) => order.indexOf(judged(boards(), [addDays('2026-01-05', days)]).verdict)
        expect(at(Math.min(a, b))).toBeLessThanOrEqual(at(Math.max(a, b)))
      }),
      { numRuns: 60 },
    )
  })
})
