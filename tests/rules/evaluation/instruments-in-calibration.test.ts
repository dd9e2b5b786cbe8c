import { describe, expect, test } from 'vitest'
import type { Calibration } from '@/shared/instruments/calibration-status'
import type { Instrument } from '@/shared/records/instrument'
import type { Lot } from '@/shared/records/lot'
import { instrumentsInCalibration } from '@/shared/rules/evaluation/instruments-in-calibration'
import { findingOf, type FactsInput } from '../facts-builder'
import { accepted, lot, rejected, rotaryDip, testOf, timer } from '../lots-builder'

const testedOn = (date: string, over: Partial<Lot> = {}) =>
  lot({ tests: [rotaryDip([1], { testedOn: date })], ...over })
const findingWith = (lots: readonly Lot[], over: FactsInput = {}) =>
  findingOf(instrumentsInCalibration, { lots, instruments: [timer], today: '2026-03-02', ...over })
const certificate = (over: Partial<Calibration>): Calibration => ({
  id: 'c',
  instrumentTag: timer.tag,
  calibratedOn: '2025-07-05',
  dueOn: '2026-01-04',
  found: 'not stated',
  certificate: 'C-1002',
  ...over,
})

// The timer T-07 is calibrated on 2026-01-05 and due on 2026-07-05.
describe('on the date of the test', () => {
  test.each([
    ['2026-01-05', 'meets'],
    ['2026-07-05', 'meets'],
    ['2026-07-06', 'fails'],
    ['2026-01-04', 'undetermined'],
  ] as const)('a test of %s: %s', (date, verdict) => {
    expect(findingWith([testedOn(date)]).verdict).toBe(verdict)
  })
  test('says which instrument, and that it was due', () => {
    expect(findingWith([testedOn('2026-07-06')]).found).toContain('T-07 was due on 2026-07-05')
  })
  test('a recalibration since does not cover an earlier test; the earlier certificate does', () => {
    const early = [testedOn('2025-12-01')]
    expect(findingWith(early).found).toContain('no certificate on file before 2026-01-05')
    expect(findingWith(early, { records: { calibration: [certificate({})] } }).verdict).toBe('meets')
  })
  test('a gap between two certificates is a gap', () => {
    const gap = certificate({ dueOn: '2025-11-01' })
    const finding = findingWith([testedOn('2025-12-01')], { records: { calibration: [gap] } })
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toContain('due on 2025-11-01')
  })
  test('a later calibration that found it outside its limits undoes the test', () => {
    const records = {
      calibration: [certificate({ calibratedOn: '2026-04-01', dueOn: '2026-10-01', found: 'outside' })],
    }
    const finding = findingWith([testedOn('2026-02-09')], { records, today: '2026-04-02' })
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toContain('outside its limits on 2026-04-01')
  })
})

describe('an instrument that cannot be known', () => {
  test('is not on file', () => {
    expect(findingWith([testedOn('2026-02-09')], { instruments: [] }).verdict).toBe('fails')
  })
  test('is not named', () => {
    const unnamed = lot({ tests: [rotaryDip([1], { instrumentId: null })] })
    expect(findingWith([unnamed]).verdict).toBe('undetermined')
  })
  test('is not asked of a check made by eye and paper', () => {
    const check = lot({ tests: [testOf('receiving-check', [], { instrumentId: null }), rotaryDip([1])] })
    expect(findingWith([check]).verdict).toBe('meets')
    expect(findingWith([check]).parts?.length).toBe(1)
  })
  test('is out of use, until a calibration says how it was found', () => {
    const retired: Instrument = { ...timer, outOfUse: true }
    const finding = findingWith([testedOn('2026-02-09')], { instruments: [retired] })
    expect(finding.verdict).toBe('undetermined')
    const found = certificate({ calibratedOn: '2026-02-20', dueOn: '2026-02-20', found: 'within' })
    const after = findingWith([testedOn('2026-02-09')], {
      instruments: [retired],
      records: { calibration: [found] },
    })
    expect(after.verdict).toBe('meets')
  })
})

describe('what comes after', () => {
  test('a repeat in calibration takes the place of a test out of calibration', () => {
    const tests = [
      rotaryDip([1], { testedOn: '2026-07-06', id: 'late' }),
      rotaryDip([1], { testedOn: '2026-07-20', id: 'again', instrumentId: 'i-new' }),
    ]
    const fresh: Instrument = {
      ...timer,
      id: 'i-new',
      tag: 'T-08',
      calibratedOn: '2026-07-01',
      dueOn: '2027-07-01',
    }
    const finding = findingWith([lot({ tests, disposition: accepted })], {
      instruments: [timer, fresh],
      today: '2026-07-21',
    })
    expect(finding.verdict).toBe('meets')
    expect(finding.parts?.[0]?.found).toContain('repeated in calibration')
  })
  test('an earlier good test does not cover a later bad one', () => {
    const tests = [
      rotaryDip([1], { testedOn: '2026-02-09', id: 'good' }),
      rotaryDip([1], { testedOn: '2026-07-06', id: 'late' }),
    ]
    expect(findingWith([lot({ tests })]).verdict).toBe('fails')
  })
  test('a rejected lot rests on no result', () => {
    expect(findingWith([testedOn('2026-07-06', { disposition: rejected })]).verdict).toBe('not applicable')
  })
})

describe('running out', () => {
  const waiting = [testedOn('2026-02-09')]
  test.each([
    ['2026-06-05', 'meets'],
    ['2026-06-06', 'marginal'],
    ['2026-07-05', 'marginal'],
    ['2026-07-06', 'marginal'],
  ] as const)('on %s, with 30 days’ notice: %s', (today, verdict) => {
    expect(findingWith(waiting, { today }).verdict).toBe(verdict)
  })
  test('says when it ran out', () => {
    expect(findingWith(waiting, { today: '2026-08-01' }).found).toContain(
      'ran out of calibration on 2026-07-05',
    )
  })
  test('is only a note once every lot is disposed of: settled approvals do not lapse by the calendar', () => {
    const finding = findingWith([testedOn('2026-02-09', { disposition: accepted })], { today: '2026-08-01' })
    expect(finding.verdict).toBe('meets')
    expect(finding.notes?.join(' ')).toContain('ran out')
  })
  test('no test, nothing to judge', () => {
    expect(findingWith([lot()]).verdict).toBe('undetermined')
  })
})
