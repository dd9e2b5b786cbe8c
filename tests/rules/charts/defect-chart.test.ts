import { describe, expect, test } from 'vitest'
import { addDays } from '@/shared/quantity/calendar'
import { samplesByAssembly } from '@/shared/charts/defect-samples'
import type { Inspection } from '@/shared/records/inspection'
import type { DefectChartKey } from '@/shared/plan/parameters/defect-charts'
import {
  defectChart,
  isThin,
  specifiedDefectCharts,
  type DefectChart,
  type DefectChartChoice,
} from '@/shared/charts/defect-chart'
import { RUN_RULE_SETS } from '@/shared/charts/run-rule-sets'
import type { JudgedChart } from '@/shared/statistics/run-rules/judged-chart'
import reference from '@/tests/reference/statistics/control-charts.json'

const RULES = RUN_RULE_SETS.limits.drawn
const looked = (count: number, defects: number, over: Partial<Inspection> = {}): Inspection => ({
  id: `i-${count}`,
  assembly: `S-${count}`,
  inspectedOn: addDays('2026-01-01', count),
  inspector: 'S. Brandt',
  magnification: 4,
  jointsSeen: 100,
  defects: Array.from({ length: defects }, (_, at) => ({ kind: 'bridge' as const, joint: `J-${at}` })),
  note: '',
  ...over,
})
const charted = (
  inspections: readonly Inspection[],
  chart: DefectChartKey,
  over: Partial<DefectChartChoice> = {},
): DefectChart => defectChart(inspections, { chart, phases: [], ...over }, RULES)
function drawn(found: DefectChart): JudgedChart {
  if ('message' in found) throw new Error(found.message)
  return found.chart
}
const beyond = ({ signals }: JudgedChart): number[] =>
  signals.filter(({ ruleId }) => ruleId === 'western-electric-1').map(({ soundedAt }) => soundedAt + 1)

describe('what inspections find, charted', () => {
  // Montgomery (1991), pp. 173–175: 26 samples of printed boards, 516 defects; samples 6 and 20 lie outside.
  test('c: the printed boards, each sample an assembly', () => {
    const { counts, values } = reference.circuitBoards
    const boards = counts.map((defects, index) => looked(index, defects))
    const chart = drawn(charted(boards, 'c'))
    expect(chart.centre[0]).toBeCloseTo(values.cbar26, 10)
    expect(chart.upper[0]).toBeCloseTo(values.UCL26, 9)
    expect(beyond(chart)).toEqual(values.out_of_limits_1based)
  })
  // Montgomery (1991), dyed cloth: 153 defects in 107.5 units, u = 1.4233; here a unit is a thousand joints.
  test('u: samples of differing size, limits by size', () => {
    const { inputs, values } = reference.dyedCloth
    const cloth = inputs.defects.map((defects, index) =>
      looked(index, defects, { jointsSeen: inputs.size[index]! * 1000 }),
    )
    const chart = drawn(charted(cloth, 'u'))
    expect(chart.centre[0]).toBeCloseTo(values.ubar, 10)
    values.limits_first3.forEach(([lower, upper], index) => {
      expect(chart.lower[index]).toBeCloseTo(lower!, 9)
      expect(chart.upper[index]).toBeCloseTo(upper!, 9)
    })
  })
  // NIST/SEMATECH e-Handbook 6.3.3.2: thirty days of fifty; 0.0524 and 0.4102, days 15 and 23 beyond.
  const days = reference.defectiveFraction.counts.flatMap((defective, day) =>
    Array.from({ length: 50 }, (_, board) =>
      looked(day * 100 + board, board < defective ? 1 + (board % 2) : 0, {
        inspectedOn: addDays('2026-01-01', day),
      }),
    ),
  )
  test('p and np: the assemblies of a day together, however many defects each has', () => {
    const share = drawn(charted(days, 'p'))
    expect(share.centre[0]).toBeCloseTo(reference.defectiveFraction.values.pbar, 10)
    expect(share.upper[0]).toBeCloseTo(reference.defectiveFraction.values.UCL, 10)
    expect(beyond(share)).toEqual(reference.defectiveFraction.values.beyond_1based)
    const number = drawn(charted(days, 'np'))
    expect(number.upper[0]).toBeCloseTo(reference.defectiveFraction.countChart.UCL, 9)
    expect(number.lower[0]).toBeCloseTo(reference.defectiveFraction.countChart.LCL, 9)
  })
  test('a level from some days is held over all', () => {
    const boards = [...Array<number>(8).fill(4), 30].map((defects, index) => looked(index, defects))
    const baseline = { from: '2026-01-01', to: addDays('2026-01-01', 7) }
    const chart = drawn(charted(boards, 'c', { baseline }))
    expect(chart.centre[8]).toBe(4)
    expect(beyond(chart)).toEqual([9])
    expect(chart.phases[0]?.limits).toEqual({
      kind: 'frozen',
      setBy: '8 samples of 2026-01-01 to 2026-01-08',
    })
  })
  test.each([
    ['too few samples', { from: '2026-01-01', to: '2026-01-07' }],
    ['no defect', { from: '2026-01-10', to: '2026-01-18' }],
  ])('days that hold %s set no limits: they are estimated', (_, baseline) => {
    const boards = [...Array<number>(9).fill(4), ...Array<number>(9).fill(0)]
    const chart = drawn(
      charted(
        boards.map((defects, index) => looked(index, defects)),
        'c',
        { baseline },
      ),
    )
    expect(chart.phases[0]?.limits).toMatchObject({ kind: 'estimated', pointsUsed: 18 })
    expect(chart.centre[0]).toBe(2)
  })
  test('a reset has a level of its own, and none before it has eight samples', () => {
    const counts = [...Array<number>(10).fill(16), ...Array<number>(9).fill(1), ...Array<number>(3).fill(40)]
    const chart = drawn(
      charted(
        counts.map((defects, index) => looked(index, defects)),
        'c',
        {
          phases: [
            { startsOn: addDays('2026-01-01', 10), name: 'new stencil' },
            { startsOn: addDays('2026-01-01', 19), name: 'second line' },
          ],
        },
      ),
    )
    expect([chart.centre[0], chart.centre[10]]).toEqual([16, 1])
    expect(chart.upper[21]).toBeNaN()
    expect(chart.values[21]).toBe(40)
    expect(chart.phases.map(({ name, from }) => [name, from])).toEqual([
      ['from the start', 0],
      ['new stencil', 10],
      ['second line', 19],
    ])
    expect(chart.signals).toEqual([])
  })
  test('a stretch without a defect has its level at nought and no signal', () => {
    const counts = [...Array<number>(8).fill(3), ...Array<number>(8).fill(0)]
    const found = charted(
      counts.map((defects, index) => looked(index, defects)),
      'u',
      { phases: [{ startsOn: addDays('2026-01-01', 8), name: 'bath renewed' }] },
    )
    expect(drawn(found).signals).toEqual([])
    expect(drawn(found).upper[12]).toBe(0)
  })
})

describe('why there is no chart', () => {
  const message = (found: DefectChart): string => ('message' in found ? found.message : 'drawn')
  const nine = (over: (index: number) => Partial<Inspection>, defects = 1) =>
    Array.from({ length: 9 }, (_, index) => looked(index, defects, over(index)))

  test.each([
    ['too few assemblies', nine(() => ({})).slice(0, 7), 'c', /8 assemblies inspected; there are 7/],
    ['no defect at all', nine(() => ({}), 0), 'c', /No defect/],
    ['assemblies of differing size', nine((index) => ({ jointsSeen: 100 + index })), 'c', /u chart/],
    ['days of differing size', [...nine(() => ({})), looked(0, 0)], 'np', /p chart/],
  ] as const)('%s', (_, inspections, chart, expected) => {
    expect(message(charted(inspections, chart))).toMatch(expected)
  })
})

describe('what the specification wants charted', () => {
  test('the u chart by day where it names none', () => {
    expect(specifiedDefectCharts()).toEqual([{ chart: 'u-by-day', phases: [] }])
  })
  test('each row one chart; half a span of days holds nothing; starts in the order of days', () => {
    const row = { chart: 'p', baselineFrom: '2026-01-01', baselineTo: '2026-01-09' } as const
    const starts = ['2026-03-01', '2026-02-01'].map((startsOn) => ({ startsOn, name: startsOn }))
    const charts = specifiedDefectCharts([row, { ...row, chart: 'c', baselineTo: undefined }], starts)
    expect(charts.map(({ chart, baseline }) => [chart, baseline])).toEqual([
      ['p', { from: '2026-01-01', to: '2026-01-09' }],
      ['c', undefined],
    ])
    expect(charts[0].phases.map(({ startsOn }) => startsOn)).toEqual(['2026-02-01', '2026-03-01'])
  })
})

test('samples with less than one defect each are thin: one defect alone would signal', () => {
  const found = (defects: readonly number[]) => ({
    samples: samplesByAssembly(defects.map((count, at) => looked(at, count))),
  })
  expect(isThin(found([0, 0, 1, 0]))).toBe(true)
  expect(isThin(found([1, 0, 2, 1]))).toBe(false)
})
