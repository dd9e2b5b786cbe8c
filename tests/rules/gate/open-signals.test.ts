import { describe, expect, test } from 'vitest'
import { openSignals } from '@/shared/gate/open-signals'
import { defectCharts } from '@/shared/plan/parameters/defect-charts'
import { addDays } from '@/shared/quantity/calendar'
import { defectSignalsAnswered } from '@/shared/rules/assessment/defect-signals-answered'
import { chartSignalsAnsweredRule } from '@/shared/rules/control/chart-signals-answered'
import { judge } from '@/shared/rules/rule'
import { inspection } from '@/tests/rules/record-builder'
import { answer, logOf } from '@/tests/rules/log-builder'
import { factsWith, set, type FactsInput } from '@/tests/rules/facts-builder'

/** NIST/SEMATECH e-Handbook 6.3.2.2, flowrate example; the tenth reading put beyond its limits of 45.8 and 55.8. */
const READINGS = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 60]
const LOG = logOf(
  'bath-temperature',
  READINGS.map((bathC, index) => ({ at: `2026-02-${String(index + 1).padStart(2, '0')}T08:00:00Z`, bathC })),
)
/** One board in ten with nine bridges, by a c chart: mean 0.9, upper limit 3.7 (c + 3 √c, NIST/SEMATECH 6.3.3.1). */
const BOARDS = Array.from({ length: 10 }, (_, index) =>
  inspection(`S-${index}`, 300, index === 4 ? 9 : 0, { inspectedOn: addDays('2026-02-01', index) }),
)
const C_CHART = set(defectCharts, [{ chart: 'c', baselineFrom: undefined, baselineTo: undefined }])

function openTasks(department: 'design' | 'production' | 'quality', over: FactsInput = {}) {
  const facts = factsWith({ logs: [LOG], inspections: BOARDS, values: [C_CHART], ...over })
  const rules = [chartSignalsAnsweredRule, defectSignalsAnswered]
  const findings = new Map(rules.map((rule) => [rule.id, judge(rule, facts)]))
  return openSignals(department, { facts }, { findings })
}

describe('signals on the desk', () => {
  test('of a log wait for production, at the log', () => {
    expect(openTasks('production')).toMatchObject([
      { verb: 'find the cause', message: '1 signal of log L-1', place: { kind: 'log', log: 'L-1' } },
    ])
  })
  test('of a chart of defects wait for quality, at the chart', () => {
    expect(openTasks('quality')).toMatchObject([
      { message: '1 signal of chart c: defects an assembly', place: { kind: 'defect chart', chart: 'c' } },
    ])
  })
  test('are nobody else’s, and nobody’s once they are answered', () => {
    expect(openTasks('design')).toEqual([])
    const own = answer({ chartRule: 'western-electric-1', readingAt: '2026-02-10T08:00:00Z' })
    expect(openTasks('production', { records: { 'signal-answer': [own] } })).toEqual([])
  })
})
