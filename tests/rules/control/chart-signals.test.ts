import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { CHART_OPTIONS, chartRules } from '@/shared/plan/parameters/control-charts'
import { bathTemperatureTarget } from '@/shared/plan/parameters/control-bath'
import { fluxControlMethod } from '@/shared/plan/parameters/control-flux'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import type { Log } from '@/shared/records/log'
import { chartSignalsAnsweredRule } from '@/shared/rules/control/chart-signals-answered'
import { askedSignals, logChart, specifiedCharting } from '@/shared/charts/log-chart'
import { columnSeries } from '@/shared/logs/log-series'
import { factsWith, findingOf, set, type FactsInput } from '../facts-builder'
import { answer, logOf } from '../log-builder'

const day = (index: number): string => `2026-02-${String(index + 1).padStart(2, '0')}T08:00:00Z`
const bathLog = (values: readonly number[], over: Partial<Log> = {}): Log =>
  logOf(
    'bath-temperature',
    values.map((bathC, index) => ({ at: day(index), bathC })),
    over,
  )
const judged = (logs: readonly Log[], over: FactsInput = {}) =>
  findingOf(chartSignalsAnsweredRule, { logs, ...over })

/** NIST/SEMATECH e-Handbook 6.3.2.2, flowrate example: ten readings, mean 50.81, mean moving range 1.8778. */
const FLOWRATE = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]
const JUMP = [...FLOWRATE.slice(0, 9), 60]

describe('chart of a log', () => {
  test('gives the handbook’s limits: 50.81 with 45.8158 and 55.8041', () => {
    const { panels, signals } = logChart(bathLog(FLOWRATE))
    const chart = panels[0]
    expect(chart?.centre[0]).toBeCloseTo(50.81, 2)
    // The handbook divides by 1.128, we by the constant to full figures.
    expect(chart?.lower[0]).toBeCloseTo(45.8158, 2)
    expect(chart?.upper[0]).toBeCloseTo(55.8041, 2)
    expect(signals.filter(({ chartRule }) => chartRule === 'western-electric-1')).toEqual([])
  })

  test('the specified window comes with it once the specification says', () => {
    const log = bathLog(FLOWRATE)
    expect(logChart(log).window).toBeUndefined()
    const values = [set(alloyFamily, 'tin-lead'), set(bathTemperatureTarget, 250)]
    expect(logChart(log, factsWith({ values })).window).toMatchObject({
      min: { value: 245 },
      max: { value: 255 },
    })
  })

  test('a characteristic nobody knows is refused', () => {
    expect(() => logChart(bathLog(FLOWRATE, { characteristic: 'humour' }))).toThrow(RangeError)
  })
})

describe('signals answered', () => {
  test('a chart without a point beyond its limits meets', () => {
    expect(judged([bathLog(FLOWRATE)]).verdict).toBe('meets')
  })

  // Mean 51.6, mean moving range 2.6: limits 44.7 and 58.5 by the handbook's formula (computed by hand).
  test('an unanswered point beyond the limits fails; its answer, and only its answer, mends it', () => {
    const logs = [bathLog(JUMP)]
    const finding = judged(logs)
    expect(finding.verdict).toBe('fails')
    expect(finding.remedy?.message).toContain('2026-02-10 08:00')
    const own = { chartRule: 'western-electric-1', readingAt: '2026-02-10T08:00:00.000Z' }
    const with_ = (over: object) =>
      judged(logs, { records: { 'signal-answer': [answer({ ...own, ...over })] } })
    expect(with_({}).verdict).toBe('meets')
    expect(with_({ log: 'L-2' }).verdict).toBe('fails')
    expect(with_({ chartRule: 'western-electric-4' }).verdict).toBe('fails')
    expect(with_({ readingAt: '2026-02-09T08:00:00Z' }).verdict).toBe('fails')
  })

  test('zone rules ask for an answer only where the programme wants them', () => {
    const shifted = [
      ...Array<number>(8)
        .fill(250)
        .map((v, i) => v + (i % 2)),
      ...[253, 254, 253, 254, 253, 254, 253, 254],
    ]
    const logs = [bathLog(shifted)]
    const zones = judged(logs, { values: [set(chartRules, 'zones')] })
    expect(zones.verdict).toBe('fails')
    expect(zones.found).toMatch(/unanswered/)
    expect(logChart(logs[0]!).signals.some(({ chartRule }) => chartRule === 'western-electric-4')).toBe(true)
  })

  test('seven readings are too few to chart, eight are enough', () => {
    expect(judged([bathLog(FLOWRATE.slice(0, 7))]).verdict).toBe('undetermined')
    expect(judged([bathLog(FLOWRATE.slice(0, 8))]).verdict).toBe('meets')
  })

  test('a log too short to chart is not passed over beside one that is charted', () => {
    const logs = [bathLog(FLOWRATE), bathLog(FLOWRATE.slice(0, 5), { code: 'L-2' })]
    const finding = judged(logs)
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toMatch(/5 readings are too few to chart: 3 more/)
  })
  test('the false signals to expect at this length are said', () => {
    // 0.0027 of ten readings beyond three sigma, about 0.15 by the eight tests.
    expect(judged([bathLog(FLOWRATE)]).notes?.join()).toContain('About 0.027 of the signals')
    const nelson = judged([bathLog(FLOWRATE)], { values: [set(chartRules, 'nelson')] })
    expect(nelson.notes?.join()).toContain('About 0.15 of the signals')
  })
  test('readings that are all alike draw no limits', () => {
    expect(judged([bathLog(Array<number>(12).fill(250))]).verdict).toBe('undetermined')
  })

  test('no log is undetermined where a bath or a flux is kept, and not asked where neither is', () => {
    expect(judged([]).verdict).toBe('undetermined')
    const hand = set(solderingProcess, 'hand')
    expect(judged([], { values: [hand, set(fluxControlMethod, 'no-liquid-flux')] }).verdict).toBe(
      'not applicable',
    )
    expect(judged([], { values: [hand, set(fluxControlMethod, 'density')] }).verdict).toBe('undetermined')
  })
})

test('law: the signals that must be answered are those of the drawn chart that it asks about', () => {
  const readings = fc.array(fc.integer({ min: 240, max: 262 }), { minLength: 8, maxLength: 28 })
  fc.assert(
    fc.property(
      readings,
      fc.nat(27),
      fc.constantFrom(...CHART_OPTIONS.map(({ value }) => value)),
      fc.constantFrom('limits' as const, 'zones' as const, 'nelson' as const),
      (values, spike, chart, rules) => {
        const log = bathLog(values.map((value, index) => (index === spike ? value + 60 : value)))
        const { choice } = specifiedCharting(log, undefined)
        const charting = { choice: { ...choice, chart, subgroup: 3 }, rules }
        const drawn = logChart(log, undefined, charting).signals.filter(({ asked }) => asked)
        expect(askedSignals(columnSeries(log, 'bathC'), charting)).toEqual(drawn)
      },
    ),
  )
})
