import { describe, expect, test } from 'vitest'
import { bathAnalysisInterval } from '@/shared/plan/limits/control-bath'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { bathAnalysisOnScheduleRule } from '@/shared/rules/control/bath-analysis-on-schedule'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { INSTRUMENT, logOf, worked } from '../log-builder'

const judged = (analysedOn: readonly string[], solderedOn: readonly string[], over: FactsInput = {}) =>
  findingOf(bathAnalysisOnScheduleRule, {
    values: [set(solderingProcess, 'wave')],
    logs: [
      logOf(
        'bath-composition',
        analysedOn.map((day) => ({ at: `${day}T08:00:00Z`, copperPct: 0.1 })),
      ),
    ],
    instruments: [INSTRUMENT],
    records: worked(...solderedOn.map((doneOn) => ({ doneOn }))),
    ...over,
  })

describe('bath analysed on schedule', () => {
  // J-STD-001 leaves the interval to the shop's history; monthly is common practice, no published source. Days by
  // hand: 2 February to 4 March 2026 are 30 days, to 5 March 31.
  test.each([
    ['2026-03-04', 'meets'],
    ['2026-03-05', 'fails'],
  ] as const)('analysed on 2 February, soldered on %s: %s', (day, verdict) => {
    expect(judged(['2026-02-02'], [day]).verdict).toBe(verdict)
  })
  test('an analysis after the boards says nothing of them', () => {
    expect(judged(['2026-03-06'], ['2026-03-05']).verdict).not.toBe('meets')
  })
  test('a programme’s own interval rules', () => {
    const requirements = [requirement(bathAnalysisInterval, 7)]
    expect(judged(['2026-02-02'], ['2026-02-20'], { requirements }).verdict).toBe('fails')
  })
  test('nothing soldered, nothing shown; no bath, nothing asked', () => {
    expect(judged(['2026-02-02'], [], { records: {} }).verdict).toBe('undetermined')
    expect(judged([], [], { values: [set(solderingProcess, 'hand')] }).verdict).toBe('not applicable')
  })
})
