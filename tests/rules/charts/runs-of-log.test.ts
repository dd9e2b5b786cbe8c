import { describe, expect, test } from 'vitest'
import { runsOfLog } from '@/shared/charts/runs-of-log'
import { fluxDensityInterval } from '@/shared/plan/limits/control-intervals'
import type { RecordOf } from '@/shared/records/record-kinds'
import { fluxDensityRule } from '@/shared/rules/control/flux-density'
import { judge } from '@/shared/rules/rule'
import { factsWith, requirement, type FactsInput } from '../facts-builder'
import { densityRead, densitySpecified } from '../control/flux-density-log'
import { INSTRUMENT, logOf, worked } from '../log-builder'

const log = logOf('flux-density', [
  densityRead('2026-02-02T08:00:00Z'),
  densityRead('2026-02-04T08:00:00Z', 0.9),
])

const facts = (runs: readonly Partial<RecordOf<'soldering-run'>>[], over: FactsInput = {}) =>
  factsWith({
    values: densitySpecified,
    logs: [log],
    instruments: [INSTRUMENT],
    records: worked(...runs),
    ...over,
  })
const statuses = (runs: readonly Partial<RecordOf<'soldering-run'>>[], over: FactsInput = {}) =>
  runsOfLog(log, facts(runs, over))?.runs.map(({ run, is }) => [run.doneOn, is])

/*
 * J-STD-001 asks for documented process control; that each day of work has its
 * reading is common practice, no published source.
 */
describe('runs against the readings of a log', () => {
  const runs = [{ doneOn: '2026-02-02' }, { doneOn: '2026-12-01' }, { doneOn: '2026-02-04' }]
  test('in time and inside, in time and outside, not in time', () => {
    expect(statuses(runs)).toEqual([
      ['2026-02-02', 'inside'],
      ['2026-02-04', 'outside'],
      ['2026-12-01', 'not shown'],
    ])
  })
  test('they are the runs that the rule names', () => {
    const part = judge(fluxDensityRule, facts(runs)).parts?.find(
      ({ subject }) => subject === 'Soldering runs',
    )
    expect(part?.verdict).toBe('fails')
    expect(part?.measured?.['runs']).toEqual(['2026-02-04 (line 1)'])
  })
  test('runs of another line, and work that is not done by machine, are not marked', () => {
    expect(statuses([{ line: 'line 2' }, { skill: 'hand-soldering' }])).toEqual([])
    expect(statuses([{ line: undefined }])).toEqual([['2026-02-02', 'inside']])
  })
  test('the interval is the one that rules in the programme', () => {
    const requirements = [requirement(fluxDensityInterval, 8, { authority: 'company' })]
    expect(runsOfLog(log, facts([{}], { requirements }))?.maxHours).toBe(8)
    const late = [{ doneOn: '2026-02-02', begunAtH: 17 }]
    expect(statuses(late)).toEqual([['2026-02-02', 'inside']])
    expect(statuses(late, { requirements })).toEqual([['2026-02-02', 'not shown']])
  })
  test('a log without a window, or without a level, has none', () => {
    expect(runsOfLog(log, factsWith({ logs: [log], records: worked({}) }))).toBeUndefined()
    const store = logOf('store-climate', [{ at: '2026-02-02T08:00:00Z', temperatureC: 20 }])
    expect(runsOfLog(store, factsWith({ values: densitySpecified, logs: [store] }))).toBeUndefined()
  })
})
