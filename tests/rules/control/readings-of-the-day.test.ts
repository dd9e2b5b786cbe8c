import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fluxDensityInterval } from '@/shared/plan/limits/control-intervals'
import { addDays } from '@/shared/quantity/calendar'
import type { Log } from '@/shared/records/log'
import type { RecordOf } from '@/shared/records/record-kinds'
import { fluxDensityRule } from '@/shared/rules/control/flux-density'
import { VERDICTS } from '@/shared/rules/finding'
import { findingOf, requirement, type FactsInput } from '../facts-builder'
import { answer, INSTRUMENT, logOf, worked } from '../log-builder'
import { densityRead, densitySpecified } from './flux-density-log'

/*
 * J-STD-001 asks for documented process control and leaves the interval to the
 * shop; each day of work is common practice, no published source.
 */

const density = (rows: ReturnType<typeof densityRead>[], over: Partial<Log> = {}) =>
  logOf('flux-density', rows, over)
const judged = (logs: Log[], runs: readonly Partial<RecordOf<'soldering-run'>>[], over: FactsInput = {}) =>
  findingOf(fluxDensityRule, {
    values: densitySpecified,
    logs,
    instruments: [INSTRUMENT],
    ...over,
    records: { ...worked(...runs), ...over.records },
  })
const runsOf = (finding: ReturnType<typeof judged>) =>
  finding.parts?.find(({ subject }) => subject === 'Soldering runs')

describe('readings belong to the days worked', () => {
  test('a density of 2 February says nothing of a board soldered on 1 December', () => {
    const finding = judged([density([densityRead('2026-02-02T08:00:00Z')])], [{ doneOn: '2026-12-01' }])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('2026-12-01 (line 1)')
  })
  test('one of the same day does; without any run there is no day to hold it against', () => {
    const logs = [density([densityRead('2026-02-02T08:00:00Z')])]
    expect(judged(logs, [{ doneOn: '2026-02-02' }]).verdict).toBe('meets')
    expect(
      findingOf(fluxDensityRule, { values: densitySpecified, logs, instruments: [INSTRUMENT] }).verdict,
    ).toBe('undetermined')
  })
  test('a run that states its hour needs a reading before it, no older than the interval', () => {
    const logs = [density([densityRead('2026-02-02T08:00:00Z')])]
    const at = (doneOn: string, begunAtH: number) => judged(logs, [{ doneOn, begunAtH }]).verdict
    expect(at('2026-02-02', 8)).toBe('meets')
    expect(at('2026-02-02', 7.9)).toBe('undetermined')
    expect(at('2026-02-03', 8)).toBe('meets')
    expect(at('2026-02-03', 8.1)).toBe('undetermined')
  })
  /* IANA time zone database: Europe/Berlin is an hour ahead of UTC in February, two from 29 March 2026, 01:00 UTC. */
  test('a day is the works’ own: half past midnight there is still the evening before in UTC', () => {
    const read = [densityRead('2026-02-02T23:30:00Z')]
    const requirements = [requirement(fluxDensityInterval, 1, { authority: 'company' })]
    const on = (doneOn: string, timeZone?: string, begunAtH?: number) =>
      judged([density(read, timeZone ? { timeZone } : {})], [{ doneOn, begunAtH }], { requirements }).verdict
    expect(on('2026-02-03', 'Europe/Berlin', 0.5)).toBe('meets')
    expect(on('2026-02-03', 'Europe/Berlin', 0.4)).toBe('undetermined')
    expect(on('2026-02-02', 'UTC', 23.5)).toBe('meets')
    expect(on('2026-02-02', undefined, 23.5)).toBe('meets')
    expect(on('2026-02-02', 'Europe/Berlin', 23.5)).toBe('undetermined')
    expect(on('2026-02-02', 'Europe/Berlin')).toBe('undetermined')
  })
  test('hours of a day on which the clocks are put forward are those that the clock showed', () => {
    const read = [densityRead('2026-03-29T06:00:00Z')]
    const requirements = [requirement(fluxDensityInterval, 1, { authority: 'company' })]
    const at = (begunAtH: number) =>
      judged([density(read, { timeZone: 'Europe/Berlin' })], [{ doneOn: '2026-03-29', begunAtH }], {
        requirements,
      }).verdict
    expect(at(7.9)).toBe('undetermined')
    expect(at(8)).toBe('meets')
    expect(at(9)).toBe('meets')
    expect(at(9.1)).toBe('undetermined')
  })
  test('a shop that reads each shift states 8 h', () => {
    const requirements = [requirement(fluxDensityInterval, 8, { authority: 'company' })]
    const logs = [density([densityRead('2026-02-02T06:00:00Z')])]
    const at = (begunAtH: number) => judged(logs, [{ begunAtH }], { requirements }).verdict
    expect(at(13.9)).toBe('meets')
    expect(at(14.1)).toBe('undetermined')
  })
  test('soldered on a reading outside: fails and names the runs, until the excursion is answered', () => {
    const logs = [
      density([
        densityRead('2026-02-02T08:00:00Z', 0.85),
        densityRead('2026-02-03T08:00:00Z', 0.85),
        densityRead('2026-02-04T08:00:00Z'),
      ]),
    ]
    const days = ['2026-02-02', '2026-02-03', '2026-02-04'].map((doneOn) => ({ doneOn }))
    const part = runsOf(judged(logs, days))
    expect(part).toMatchObject({ verdict: 'fails' })
    expect(part?.found).toContain('2026-02-02 (line 1), 2026-02-03 (line 1):')
    const records = { 'signal-answer': [answer({ readingAt: '2026-02-02T08:00:00Z' })] }
    expect(judged(logs, days, { records }).verdict).toBe('meets')
  })
  test('a reading of another line does not count; the bench or machine may be named instead', () => {
    const logs = [density([densityRead('2026-02-02T08:00:00Z')])]
    expect(judged(logs, [{ line: 'line 2' }]).verdict).toBe('undetermined')
    expect(judged(logs, [{ line: ' LINE 1' }]).verdict).toBe('meets')
    expect(judged(logs, [{ line: 'Machine 1' }]).verdict).toBe('meets')
    expect(judged(logs, [{ line: undefined }]).verdict).toBe('meets')
    const two = [...logs, density([densityRead('2026-02-02T08:00:00Z')], { code: 'L-2', line: 'line 2' })]
    expect(judged(two, [{ line: undefined }]).verdict).toBe('undetermined')
  })
  test('hand soldering takes no flux from the tank', () => {
    const logs = [density([densityRead('2026-02-02T08:00:00Z')])]
    const runs = [{}, { doneOn: '2026-06-01', skill: 'hand-soldering' }] as const
    expect(judged(logs, [...runs]).verdict).toBe('meets')
  })
})

describe('the instrument of each reading', () => {
  const rows = [densityRead('2026-02-02T08:00:00Z'), densityRead('2026-09-02T08:00:00Z')]
  const runs = [{ doneOn: '2026-02-02' }, { doneOn: '2026-09-02' }]
  const certificate = (calibratedOn: string, dueOn: string, found = 'within') => ({
    id: `c-${calibratedOn}`,
    instrumentTag: 'I-1',
    calibratedOn,
    dueOn,
    found,
    certificate: 'C',
  })
  test('was to be in calibration then, not only at the newest reading', () => {
    const instruments = [{ ...INSTRUMENT, calibratedOn: '2026-06-01', dueOn: '2027-06-01' }]
    const finding = judged([density(rows)], runs, { instruments })
    expect(finding.verdict).toBe('undetermined')
    expect(runsOf(finding)?.found).toContain('2026-02-02')
    const earlier = { calibration: [certificate('2025-06-01', '2026-06-01')] }
    expect(judged([density(rows)], runs, { instruments, records: earlier }).verdict).toBe('meets')
  })
  test('found outside its limits afterwards, it had read nothing', () => {
    const instruments = [{ ...INSTRUMENT, calibratedOn: '2026-06-01', dueOn: '2027-06-01' }]
    const calibration = [
      certificate('2025-06-01', '2026-06-01'),
      certificate('2026-06-01', '2027-06-01', 'outside'),
    ]
    expect(judged([density(rows)], runs, { instruments, records: { calibration } }).verdict).toBe(
      'undetermined',
    )
  })
  test('not named: well inside it is noted, within the guard band it cannot tell inside from outside', () => {
    const unnamed = (value: number) =>
      judged([density([densityRead('2026-02-02T08:00:00Z', value)], { instrumentId: null })], [{}])
    expect(unnamed(0.82).verdict).toBe('meets')
    expect(unnamed(0.82).notes?.join()).toContain('No instrument is named for L-1')
    expect(unnamed(0.8295).verdict).toBe('undetermined')
  })
})

test('law: one reading fewer never makes undetermined or fails meet', () => {
  const day = fc.integer({ min: 0, max: 6 }).map((days) => addDays('2026-02-02', days))
  const value = fc.constantFrom(0.8, 0.82, 0.829, 0.84)
  const row = fc.record({ day, value, hour: fc.integer({ min: 0, max: 23 }) })
  fc.assert(
    fc.property(
      fc.uniqueArray(row, { minLength: 2, maxLength: 6, selector: (one) => `${one.day} ${one.hour}` }),
      fc.array(day, { minLength: 1, maxLength: 4 }),
      fc.nat(),
      (rows, days, pick) => {
        const sorted = rows
          .map(({ day: on, hour, value: found }) =>
            densityRead(`${on}T${String(hour).padStart(2, '0')}:00:00Z`, found),
          )
          .sort((one, other) => (one.at < other.at ? -1 : 1))
        const inside = sorted.filter(({ densityGPerMl }) => Math.abs(densityGPerMl - 0.82) <= 0.01)
        if (inside.length === 0) return
        // An inside reading taken away: what rested on it rests on nothing.
        const gone = inside[pick % inside.length]!
        const fewer = sorted.filter((one) => one !== gone)
        const runs = days.map((doneOn) => ({ doneOn }))
        const verdict = (kept: typeof sorted) => VERDICTS.indexOf(judged([density(kept)], runs).verdict)
        const order = verdict(sorted)
        if (order < VERDICTS.indexOf('undetermined')) return
        expect(verdict(fewer)).toBeGreaterThanOrEqual(VERDICTS.indexOf('undetermined'))
      },
    ),
  )
})
