import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  CHART_OPTIONS,
  chartPhases,
  chartRules,
  processCharts,
} from '@/shared/plan/parameters/control-charts'
import { addDays } from '@/shared/quantity/calendar'
import { specifiedChart, type ChartChoice } from '@/shared/charts/chart-choice'
import { panelsOf } from '@/shared/charts/chart-panels'
import { groupsOf, phaseStarts } from '@/shared/charts/chart-stretches'
import { chartSignalsAnsweredRule } from '@/shared/rules/control/chart-signals-answered'
import { limitsInWords } from '@/shared/charts/chart-words'
import { logChart } from '@/shared/charts/log-chart'
import { RUN_RULE_SETS } from '@/shared/charts/run-rule-sets'
import reference from '@/tests/reference/statistics/control-charts.json'
import { factsWith, findingOf, set, type SetValue } from '../facts-builder'
import { answer, logOf } from '../log-builder'

const RULES = RUN_RULE_SETS.zones.drawn
const START = '2026-01-05'
const instant = (day: number): number => Date.parse(`${addDays(START, day)}T08:00:00Z`)
/** One reading a day from 5 January on. */
const daily = (values: readonly number[]) => ({ instants: values.map((_, day) => instant(day)), values })
const chosen = (over: Partial<ChartChoice>): ChartChoice => ({
  chart: 'individuals',
  subgroup: 5,
  grouping: 'in-a-row',
  phases: [],
  ...over,
})
const bathLog = (values: readonly number[]) =>
  logOf(
    'bath-temperature',
    values.map((bathC, day) => ({ at: `${addDays(START, day)}T08:00:00Z`, bathC })),
  )
const ends = (column: Float64Array): number[] => [column[0]!, column[column.length - 1]!]

describe('charts of a log, as the handbooks work them', () => {
  // NIST/SEMATECH e-Handbook 6.3.2.2, flow rates: mean moving range 1.8778, and D4 = 3.267.
  test('individuals bring their moving range', () => {
    const { panels } = panelsOf(daily(reference.singleReadings.inputs.x), chosen({}), RULES)
    const [level, spread] = panels
    expect(level?.centre[0]).toBeCloseTo(50.81, 10)
    expect(spread?.kind).toBe('moving-range')
    expect(spread?.centre[0]).toBeCloseTo(reference.singleReadings.values.MRbar, 10)
    expect(spread?.instants[0]).toBe(instant(1))
    expect([level?.asked, spread?.asked]).toEqual([true, false])
  })

  // Montgomery (1991), piston rings: 25 samples of five; limits computed in R.
  test('125 readings in a row make the 25 samples of the piston rings', () => {
    const { rows, values } = reference.pistonRings
    const series = daily(rows.flat())
    const byRange = panelsOf(series, chosen({ chart: 'mean-range' }), RULES).panels
    expect(byRange[0]?.lines[0]?.length).toBe(25)
    expect(Math.abs(byRange[0]!.upper[0]! - values.xbar_R.UCL)).toBeLessThan(1e-6)
    expect(Math.abs(byRange[1]!.upper[0]! - values.R.UCL)).toBeLessThan(1e-6)
    expect(byRange[0]?.instants[0]).toBe(instant(4))
    const byDeviation = panelsOf(series, chosen({ chart: 'mean-deviation' }), RULES).panels
    expect(byDeviation[0]?.lower[0]).toBeCloseTo(values.xbar_S.LCL, 9)
    expect(byDeviation[1]?.upper[0]).toBeCloseTo(values.S.UCL, 10)
    expect(byDeviation[1]?.asked).toBe(true)
  })

  // Roberts’ recursion by hand: level 10, weight 0.2, so 12 gives 10.4 and then 10 gives 10.32.
  test('the weighted average starts at the level and takes a fifth of what is new', () => {
    const values = [9, 11, 9, 11, 9, 11, 9, 11, 12, 10]
    const baseline = { from: START, to: addDays(START, 7) }
    const { panels } = panelsOf(daily(values), chosen({ chart: 'weighted-average', baseline }), RULES)
    const [line] = panels[0]!.lines
    expect(panels[0]?.centre[0]).toBe(10)
    expect(line?.[0]).toBeCloseTo(9.8, 12)
    const before = line![7]!
    expect(line?.[8]).toBeCloseTo(before + 0.2 * (12 - before), 12)
    expect(panels[0]?.rulesNotRun.map(({ ruleId }) => ruleId)).toContain('western-electric-4')
  })

  // Level 10, moving range 2, σ = 2 · 1.772454 / 2: allowance σ/2, interval 5σ. Readings held four σ high add 3.5 σ each.
  test('sums pass their decision interval at the second reading four sigma high', () => {
    const sigma = Math.sqrt(Math.PI)
    const high = 10 + 4 * sigma
    const values = [9, 11, 9, 11, 9, 11, 9, 11, high, high]
    const baseline = { from: START, to: addDays(START, 7) }
    const { panels } = panelsOf(daily(values), chosen({ chart: 'cumulative-sum', baseline }), RULES)
    expect(panels[0]?.upper[9]).toBeCloseTo(5 * sigma, 9)
    const before = panels[0]!.lines[0]![7]!
    expect(panels[0]?.lines[0]?.[9]).toBeCloseTo(before + 7 * sigma, 9)
    expect(panels[0]?.signals.map(({ chartRule, point }) => [chartRule, point])).toEqual([
      ['cumulative-sum:high', 9],
    ])
  })
})

describe('limits held, and resets', () => {
  const values = [
    ...Array.from({ length: 10 }, (_, i) => 250 + (i % 2)),
    260,
    261,
    260,
    261,
    260,
    261,
    260,
    261,
  ]

  test('limits held from the first ten days stay where those days put them, and say so', () => {
    const baseline = { from: START, to: addDays(START, 9) }
    const { panels } = panelsOf(daily(values), chosen({ baseline }), RULES)
    expect(ends(panels[0]!.centre)).toEqual([250.5, 250.5])
    expect(limitsInWords(panels[0]!.phases[0]!)).toBe('held, from 10 readings of 2026-01-05 to 2026-01-14')
    expect(
      panels[0]?.signals.some(({ ruleId, point }) => ruleId === 'western-electric-1' && point === 10),
    ).toBe(true)
  })

  test('too few readings in those days hold nothing: the limits are estimated, and say so', () => {
    const baseline = { from: START, to: addDays(START, 6) }
    const { panels } = panelsOf(daily(values), chosen({ baseline }), RULES)
    expect(limitsInWords(panels[0]!.phases[0]!)).toBe('estimated from these 18 points')
  })

  test('a reset gives the eight readings after it limits of their own, and no signal', () => {
    const phases = [{ startsOn: addDays(START, 10), name: 'new pump' }]
    const { panels } = panelsOf(daily(values), chosen({ phases }), RULES)
    expect(ends(panels[0]!.centre)).toEqual([250.5, 260.5])
    expect(panels[0]?.phases.map(({ name, from, to }) => [name, from, to])).toEqual([
      ['from the start', 0, 10],
      ['new pump', 10, 18],
    ])
    expect(panels[0]?.signals).toEqual([])
    // The step between the stretches is no range of either.
    expect(panels[1]?.lines[0]?.length).toBe(16)
  })

  test('seven readings after a reset have no limits yet', () => {
    const phases = [{ startsOn: addDays(START, 11), name: 'new pump' }]
    const { panels } = panelsOf(daily(values), chosen({ phases }), RULES)
    expect(panels[0]?.upper[17]).toBeNaN()
    expect(limitsInWords(panels[0]!.phases[1]!)).toBe('none yet: 7 points are too few')
  })

  test('starts outside the readings are none; two on one day are one', () => {
    const { instants } = daily([1, 2, 3])
    const at = (day: number, name: string) => ({ startsOn: addDays(START, day), name })
    expect(phaseStarts({ instants }, [at(-3, 'before'), at(1, 'a'), at(1, 'b'), at(9, 'after')])).toEqual([
      { name: 'before', from: 0 },
      { name: 'b', from: 1 },
    ])
  })
})

describe('subgroups', () => {
  const instants = [0, 1, 2, 24, 25, 48, 49, 50].map(
    (hour) => Date.parse('2026-01-05T06:00:00Z') + hour * 3_600_000,
  )
  const series = { instants, values: [1, 2, 3, 4, 5, 6, 7, 8] }

  test('in a row: whole ones only, the rest is counted', () => {
    expect(groupsOf(series, chosen({ subgroup: 3 }))).toMatchObject({
      groups: [
        [1, 2, 3],
        [4, 5, 6],
      ],
      leftOut: 2,
    })
  })
  test('of each day: the day with too few gives none', () => {
    expect(groupsOf(series, chosen({ subgroup: 3, grouping: 'each-day' }))).toMatchObject({
      groups: [
        [1, 2, 3],
        [6, 7, 8],
      ],
      leftOut: 2,
    })
  })
  test('a day, and the day of a reset, are those of the works’ clock', () => {
    // IANA time zone database: Europe/Berlin is an hour ahead of UTC in January.
    const evening = ['22:00', '22:30', '23:00', '23:30'].map((time) => Date.parse(`2026-01-05T${time}:00Z`))
    const read = { instants: evening, values: [1, 2, 3, 4] }
    const daily = chosen({ subgroup: 2, grouping: 'each-day' })
    const phases = [{ startsOn: '2026-01-06', name: 'after' }]
    const there = { ...read, log: { timeZone: 'Europe/Berlin' } }
    expect(groupsOf(read, daily).groups).toEqual([[1, 2]])
    expect(groupsOf(there, daily).groups).toEqual([
      [1, 2],
      [3, 4],
    ])
    expect(phaseStarts(read, phases)).toHaveLength(1)
    expect(phaseStarts(there, phases).at(-1)).toEqual({ name: 'after', from: 2 })
  })
  test('law: no subgroup reaches across a reset, and nothing is lost', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 40 }),
        fc.nat(40),
        fc.integer({ min: 2, max: 5 }),
        (values, start, subgroup) => {
          const phases = [{ startsOn: addDays(START, start), name: 'new' }]
          const found = groupsOf(daily(values), chosen({ subgroup, phases }))
          expect(found.groups.length * subgroup + found.leftOut).toBe(values.length)
          const [, second] = phaseStarts(daily(values), phases)
          const before = second ? Math.floor(second.from / subgroup) : found.groups.length
          expect(found.groups.slice(0, before).flat()).toEqual(values.slice(0, before * subgroup))
        },
      ),
    )
  })
})

describe('what the specification says of a chart', () => {
  const JUMP = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 60]
  const row = (over: object) =>
    set(processCharts, [{ characteristic: 'bath-temperature', chart: 'individuals', ...over }] as never)

  test('nothing: individuals, estimated', () => {
    expect(specifiedChart(bathLog(JUMP), undefined, undefined, [])).toEqual(chosen({}))
  })
  test('its row, and the resets of the log itself, the earliest first', () => {
    const phases = [
      { log: 'l-1', startsOn: '2026-02-02', name: 'late' },
      { log: 'L-1', startsOn: '2026-01-02', name: 'early' },
      { log: 'L-2', startsOn: '2026-01-02', name: 'another log' },
    ]
    const charts = [{ characteristic: 'bath-temperature', chart: 'mean-range', subgroup: 4 }] as const
    expect(specifiedChart(bathLog(JUMP), charts as never, phases, [])).toEqual(
      chosen({
        chart: 'mean-range',
        subgroup: 4,
        phases: [
          { startsOn: '2026-01-02', name: 'early' },
          { startsOn: '2026-02-02', name: 'late' },
        ],
      }),
    )
  })
  test('those recorded at the machine beside its own; of two on one day its own', () => {
    const own = [{ log: 'L-1', startsOn: '2026-02-02', name: 'own word for it' }]
    const resets = [
      { id: '1', log: 'L-1', startsOn: '2026-02-02', name: 'new pump' },
      { id: '2', log: 'L-1', startsOn: '2026-01-02', name: 'bath renewed' },
      { id: '3', log: 'L-2', startsOn: '2026-01-03', name: 'another log' },
    ]
    expect(specifiedChart(bathLog(JUMP), undefined, own, resets).phases).toEqual([
      { startsOn: '2026-01-02', name: 'bath renewed' },
      { startsOn: '2026-02-02', name: 'own word for it' },
    ])
  })
  test('a reset at the machine is to the gate what one of the specification is', () => {
    const startsOn = addDays(START, 9)
    const logs = [bathLog(JUMP)]
    const stated = set(chartPhases, [{ log: 'L-1', startsOn, name: 'mended' }])
    const recorded = { 'chart-reset': [{ id: '1', log: 'L-1', startsOn, name: 'mended' }] }
    const judged = findingOf(chartSignalsAnsweredRule, { logs, records: recorded })
    expect(judged).toEqual(findingOf(chartSignalsAnsweredRule, { logs, values: [stated] }))
    expect(judged.verdict).toBe('meets')
    const drawn = (facts: Parameters<typeof factsWith>[0]) => logChart(bathLog(JUMP), factsWith(facts)).panels
    expect(drawn({ records: recorded })).toEqual(drawn({ values: [stated] }))
    expect(drawn({ records: recorded })).not.toEqual(drawn({}))
  })
  test('the gate asks about the chart that is specified, not about another', () => {
    const logs = [bathLog(JUMP)]
    const judged = (...values: SetValue[]) => findingOf(chartSignalsAnsweredRule, { logs, values })
    expect(judged().verdict).toBe('fails')
    // A reset on the day of the jump leaves one reading, which has no limits yet.
    const start = set(chartPhases, [{ log: 'L-1', startsOn: addDays(START, 9), name: 'mended' }])
    expect(judged(start).verdict).toBe('meets')
    expect(judged(row({ chart: 'cumulative-sum' })).found).toMatch(/signals/)
  })
  test('a signal of a range is answered under its own name', () => {
    const calm = Array.from({ length: 22 }, (_, i) => 250 + (i % 2))
    const logs = [bathLog([...calm, 244, 257])]
    const values = [row({ chart: 'mean-range', subgroup: 2 })]
    const open = findingOf(chartSignalsAnsweredRule, { logs, values })
    expect(open.verdict).toBe('fails')
    const readingAt = `${addDays(START, 23)}T08:00:00Z`
    const answered = (chartRule: string) =>
      findingOf(chartSignalsAnsweredRule, {
        logs,
        values,
        records: { 'signal-answer': [answer({ chartRule, readingAt })] },
      }).verdict
    expect(answered('western-electric-1')).toBe('fails')
    expect(answered('range:western-electric-1')).toBe('meets')
  })
  test('Nelson’s tests can be asked for: six readings rising', () => {
    const rising = [250, 251, 250, 251, 250, 250.1, 250.2, 250.3, 250.4, 250.5]
    const facts = factsWith({ values: [set(chartRules, 'nelson')] })
    const { signals } = logChart(bathLog(rising), facts)
    expect(signals.filter(({ chartRule, asked }) => chartRule === 'nelson-3' && asked)).toHaveLength(1)
  })
})

test('50,000 readings are charted every way without going through them for each', () => {
  const values = Array.from({ length: 50_000 }, (_, i) => 250 + Math.sin(i * 12.9898) * 2)
  const series = { instants: values.map((_, i) => i * 60_000), values }
  for (const { value: chart } of CHART_OPTIONS) {
    const began = performance.now()
    panelsOf(series, chosen({ chart }), RULES)
    // In a tenth of a second on a machine of its own; reading by reading it takes minutes.
    expect(performance.now() - began).toBeLessThan(10_000)
  }
})

describe('what is charted is what the specification limits', () => {
  const at = (index: number) => `${addDays(START, index)}T08:00:00Z`

  // By hand: 52 mm at 1.05 m/min is 52 ÷ 17.5 mm/s, 2.971 s.
  test('dwell, from contact length and conveyor speed, against the window of the dwell', () => {
    const rows = Array.from({ length: 8 }, (_, index) => ({
      at: at(index),
      contactLengthMm: 52 + (index % 2),
      conveyorSpeedMPerMin: 1.05,
    }))
    const chart = logChart(logOf('wave-contact', rows), factsWith())
    expect([chart.label, chart.unit]).toEqual(['Dwell in the main wave', 's'])
    expect(chart.series.values[0]).toBeCloseTo(52 / 17.5, 9)
    expect(chart.window?.unit).toBe('s')
  })

  // A flux that only warms and cools keeps its density at 25 °C: 0.812 + 0.00085 · (T − 25), read backwards.
  test('a density that follows the temperature alone draws no signal', () => {
    const rows = Array.from({ length: 12 }, (_, index) => {
      const temperatureC = index === 11 ? 40 : 22 + (index % 4)
      return {
        at: at(index),
        densityGPerMl: Number((0.812 - 0.00085 * (temperatureC - 25) + 0.0001 * (index % 2)).toFixed(6)),
        temperatureC,
      }
    })
    const chart = logChart(logOf('flux-density', rows), factsWith())
    expect(chart.series.values[11]).toBeCloseTo(0.8121, 9)
    expect(chart.signals.filter(({ asked }) => asked)).toEqual([])
  })
})
