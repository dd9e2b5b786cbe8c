import { describe, expect, test } from 'vitest'
import { addDays } from '@/shared/quantity/calendar'
import { samplesByAssembly } from '@/shared/records/defect-samples'
import type { Inspection } from '@/shared/records/inspection'
import { defectChart, isThin, type DefectChart } from '@/shared/rules/control/defect-chart'
import { RUN_RULE_SETS } from '@/shared/rules/control/run-rule-sets'
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
function drawn(found: DefectChart): JudgedChart {
  if ('says' in found) throw new Error(found.says)
  return found.chart
}
const beyond = ({ signals }: JudgedChart): number[] =>
  signals.filter(({ ruleId }) => ruleId === 'western-electric-1').map(({ soundedAt }) => soundedAt + 1)

describe('what inspections find, charted', () => {
  // Montgomery (1991), pp. 173–175: 26 samples of printed boards, 516 defects; samples 6 and 20 lie outside.
  test('c: the printed boards, each sample an assembly', () => {
    const { counts, values } = reference.circuitBoards
    const boards = counts.map((defects, index) => looked(index, defects))
    const chart = drawn(defectChart(boards, 'c', RULES))
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
    const chart = drawn(defectChart(cloth, 'u', RULES))
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
    const share = drawn(defectChart(days, 'p', RULES))
    expect(share.centre[0]).toBeCloseTo(reference.defectiveFraction.values.pbar, 10)
    expect(share.upper[0]).toBeCloseTo(reference.defectiveFraction.values.UCL, 10)
    expect(beyond(share)).toEqual(reference.defectiveFraction.values.beyond_1based)
    const number = drawn(defectChart(days, 'np', RULES))
    expect(number.upper[0]).toBeCloseTo(reference.defectiveFraction.countChart.UCL, 9)
    expect(number.lower[0]).toBeCloseTo(reference.defectiveFraction.countChart.LCL, 9)
  })
  test('a level from some days is held over all', () => {
    const boards = [...Array<number>(8).fill(4), 30].map((defects, index) => looked(index, defects))
    const chart = drawn(defectChart(boards, 'c', RULES, { to: addDays('2026-01-01', 7) }))
    expect(chart.centre[8]).toBe(4)
    expect(beyond(chart)).toEqual([9])
  })
})

describe('why there is no chart', () => {
  const says = (found: DefectChart): string => ('says' in found ? found.says : 'drawn')
  const nine = (over: (index: number) => Partial<Inspection>, defects = 1) =>
    Array.from({ length: 9 }, (_, index) => looked(index, defects, over(index)))

  test.each([
    ['too few assemblies', nine(() => ({})).slice(0, 7), 'c', /7 assemblies inspected/],
    ['no defect at all', nine(() => ({}), 0), 'c', /No defect/],
    ['assemblies of differing size', nine((index) => ({ jointsSeen: 100 + index })), 'c', /u chart/],
    ['days of differing size', [...nine(() => ({})), looked(0, 0)], 'np', /p chart/],
  ] as const)('%s', (_, inspections, chart, expected) => {
    expect(says(defectChart(inspections, chart, RULES))).toMatch(expected)
  })
  test('days that hold too few samples set no limits', () => {
    expect(
      says(
        defectChart(
          nine(() => ({})),
          'c',
          RULES,
          { from: '2027-01-01' },
        ),
      ),
    ).toMatch(/Fewer than 8/)
  })
})

test('samples with less than one defect each are thin: one defect alone would signal', () => {
  const found = (defects: readonly number[]) => ({
    samples: samplesByAssembly(defects.map((count, at) => looked(at, count))),
  })
  expect(isThin(found([0, 0, 1, 0]))).toBe(true)
  expect(isThin(found([1, 0, 2, 1]))).toBe(false)
})
