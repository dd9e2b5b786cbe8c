import { describe, expect, test } from 'vitest'
import type { Chart } from '@/shared/statistics/charts/chart'
import { defectCountChart } from '@/shared/statistics/charts/defect-count'
import { individualsChart } from '@/shared/statistics/charts/individuals'
import { movingRangeChart } from '@/shared/statistics/charts/moving-range'
import { chartInPhases } from '@/shared/statistics/charts/phases'
import { proportionDefectiveChart } from '@/shared/statistics/charts/proportion-defective'
import { weightedAverageChart } from '@/shared/statistics/charts/weighted-average'
import { detectSignals } from '@/shared/statistics/run-rules/detect'
import { judgeChart } from '@/shared/statistics/run-rules/judged-chart'
import { NELSON_1984 } from '@/shared/statistics/run-rules/nelson'
import type { RunRule } from '@/shared/statistics/run-rules/rule'
import { WESTERN_ELECTRIC_1956 } from '@/shared/statistics/run-rules/western-electric'
import reference from '@/tests/reference/statistics/control-charts.json'

const ALL: readonly RunRule[] = [...WESTERN_ELECTRIC_1956, ...NELSON_1984]
const rule = (id: string): RunRule => ALL.find((candidate) => candidate.id === id)!

/** Readings already counted in sigmas from the centre. */
const chartOf = (values: readonly number[]): Chart =>
  individualsChart(values, { kind: 'frozen', setBy: 'test', centre: 0, processSigma: 1 })
const signals = (id: string, values: readonly number[]) => detectSignals(chartOf(values), [rule(id)])
const repeat = (times: number, value: number): number[] => new Array<number>(times).fill(value)

describe('each rule sounds at its last point, and not one point sooner', () => {
  const cases: [id: string, pattern: number[], direction: string][] = [
    ['western-electric-1', [3.01], 'above'],
    ['western-electric-1', [-3.01], 'below'],
    ['western-electric-2', [2.1, 0, 2.1], 'above'],
    ['western-electric-2', [-2.1, -2.1], 'below'],
    ['western-electric-3', [1.1, 1.1, -0.5, 1.1, 1.1], 'above'],
    ['western-electric-4', repeat(8, 0.2), 'above'],
    ['nelson-1', [-3.01], 'below'],
    ['nelson-2', repeat(9, -0.2), 'below'],
    ['nelson-3', [-0.5, -0.3, -0.1, 0.1, 0.3, 0.5], 'rising'],
    ['nelson-3', [0.5, 0.3, 0.1, -0.1, -0.3, -0.5], 'falling'],
    ['nelson-4', Array.from({ length: 14 }, (_, index) => (index % 2 ? 0.3 : -0.3)), 'either'],
    ['nelson-5', [2.1, 0, 2.1], 'above'],
    ['nelson-6', [-1.1, -1.1, 0.5, -1.1, -1.1], 'below'],
    ['nelson-7', Array.from({ length: 15 }, (_, index) => (index % 2 ? 0.9 : -0.9)), 'either'],
    ['nelson-8', [1.1, 1.1, -1.1, 1.1, -1.1, -1.1, 1.1, 1.1], 'either'],
  ]
  test.each(cases)('%s %j', (id, pattern, direction) => {
    const found = signals(id, pattern)
    expect(found).toHaveLength(1)
    expect(found[0]).toMatchObject({ ruleId: id, direction, soundedAt: pattern.length - 1 })
    const oneShort = pattern.length > 1 ? pattern.slice(0, -1) : [0]
    expect(signals(id, oneShort)).toEqual([])
  })

  test('every rule of both sources is covered above', () => {
    expect(new Set(cases.map(([id]) => id))).toEqual(new Set(ALL.map(({ id }) => id)))
  })
})

describe('what a signal says', () => {
  test('the points of two in three are those beyond the zone, not the one between', () => {
    expect(signals('nelson-5', [0, 2.5, 0, 2.2, 0])[0]!.points).toEqual([1, 3])
  })

  test('a long run is one signal, sounded where it was first long enough', () => {
    expect(signals('western-electric-4', [-1, ...repeat(20, 0.5)])).toEqual([
      {
        ruleId: 'western-electric-4',
        direction: 'above',
        soundedAt: 8,
        points: Array.from({ length: 20 }, (_, index) => index + 1),
      },
    ])
  })

  test('crowds that share a point are one signal; crowds apart are two', () => {
    expect(signals('nelson-5', [2.5, 2.5, 0, 2.5, 0, 2.5]).map(({ points }) => points)).toEqual([
      [0, 1, 3, 5],
    ])
    expect(signals('nelson-5', [2.5, 2.5, 0, 0, 0, 2.5, 2.5]).map(({ points }) => points)).toEqual([
      [0, 1],
      [5, 6],
    ])
  })

  test('signals come in the order in which they would have sounded', () => {
    const found = detectSignals(chartOf([...repeat(9, 0.5), -3.5]), ALL)
    expect(found.map(({ soundedAt }) => soundedAt)).toEqual([7, 8, 9, 9])
  })
})

describe('edges', () => {
  test('a point on a limit, on a zone line or on the centre is not beyond it', () => {
    expect(signals('nelson-1', [3, -3])).toEqual([])
    expect(signals('nelson-5', [2, 2, 2])).toEqual([])
    expect(signals('nelson-2', [...repeat(8, 1), 0, ...repeat(8, 1)])).toEqual([])
    expect(signals('nelson-7', repeat(20, 1))).toEqual([])
    expect(signals('nelson-8', repeat(20, 1))).toEqual([])
  })

  test('equal neighbours end a trend and an alternation', () => {
    expect(signals('nelson-3', [1, 2, 3, 3, 4, 5])).toEqual([])
    expect(signals('nelson-4', [0, 1, 0, 1, 0, 1, 0, 0, 1, 0, 1, 0, 1, 0, 1])).toEqual([])
  })

  test('a trend that turns is two trends, each with the turning point', () => {
    expect(signals('nelson-3', [0, 1, 2, 3, 4, 5, 4, 3, 2, 1, 0]).map(({ points }) => points)).toEqual([
      [0, 1, 2, 3, 4, 5],
      [5, 6, 7, 8, 9, 10],
    ])
  })

  test('two beyond two sigma in four points are not two in three', () => {
    expect(signals('nelson-5', [2.5, 0, 0, 2.5])).toEqual([])
    expect(signals('nelson-6', [1.5, 1.5, 0, 0, 1.5, 1.5])).toEqual([])
  })

  test('a trend does not reach from one phase into the next', () => {
    const chart = chartInPhases(
      [0, 1, 2, 3, 4, 5, 6],
      [
        { name: 'old', from: 0 },
        { name: 'new', from: 2 },
      ],
      (part) => individualsChart(part, { kind: 'frozen', setBy: 'test', centre: 3, processSigma: 10 }),
    )
    expect(detectSignals(chart, [rule('nelson-3')])).toEqual([])
  })

  test('a run does not reach from one phase into the next', () => {
    const readings = [1, 3, 2, 2, 2, 2, 4, 12, 10, 13, 13, 13, 13, 15]
    const chart = chartInPhases(
      readings,
      [
        { name: 'old', from: 0 },
        { name: 'new', from: 7 },
      ],
      (part, { from }) =>
        individualsChart(part, {
          kind: 'frozen',
          setBy: 'test',
          centre: from === 0 ? 0 : 9,
          processSigma: 10,
        }),
    )
    expect(detectSignals(chart, [rule('western-electric-4')])).toEqual([])
  })

  test('constant readings give no signal but that they hug the centre', () => {
    const individuals = individualsChart(repeat(30, 0.1))
    expect(detectSignals(individuals, ALL)).toEqual([])
  })
})

describe('false alarms, against the normal distribution', () => {
  // Probabilities computed with scipy from the normal distribution; here every
  // sequence of zones is tried and weighted, so the rule's own code counts them.
  const trials = (length: number, zones: readonly { value: number; chance: number }[]) => {
    let sequences: { values: number[]; chance: number }[] = [{ values: [], chance: 1 }]
    for (let step = 0; step < length; step++)
      sequences = sequences.flatMap(({ values, chance }) =>
        zones.map((zone) => ({ values: [...values, zone.value], chance: chance * zone.chance })),
      )
    return sequences
  }
  const falseAlarm = (id: string, length: number, zones: { value: number; chance: number }[]): number =>
    trials(length, zones)
      .filter(({ values }) => signals(id, values).length > 0)
      .reduce((sum, { chance }) => sum + chance, 0)
  const sides = [
    { value: 0.5, chance: 0.5 },
    { value: -0.5, chance: 0.5 },
  ]
  const beyondTwo = 0.022750131948179195
  const withinOne = 0.6826894921370859

  test('nine in a row on one side: 0.00390625; eight: 0.0078125', () => {
    expect(falseAlarm('nelson-2', 9, sides)).toBe(0.00390625)
    expect(falseAlarm('western-electric-4', 8, sides)).toBe(0.0078125)
  })

  test('two of three beyond two sigma on the upper side: 0.0015291560', () => {
    const zones = [
      { value: 2.5, chance: beyondTwo },
      { value: 0, chance: 1 - beyondTwo },
    ]
    expect(falseAlarm('nelson-5', 3, zones)).toBeCloseTo(0.0015291560074777374, 12)
  })

  test('eight in a row outside one sigma: 0.000102772', () => {
    const zones = [
      { value: 1.5, chance: 1 - withinOne },
      { value: 0, chance: withinOne },
    ]
    expect(falseAlarm('nelson-8', 8, zones)).toBeCloseTo(0.00010277219526595066, 12)
  })
})

describe('published charts', () => {
  const sounded = (chart: Chart, rules: readonly RunRule[] = [rule('western-electric-1')]): number[] =>
    judgeChart(chart, rules).signals.map(({ soundedAt }) => soundedAt + 1)

  // Montgomery (1991); NIST/SEMATECH e-Handbook 6.3.3.1, 6.3.3.2, 6.3.2.4.
  test('printed boards 6 and 20, wafer 24, samples 15 and 23, and no EWMA signal', () => {
    expect(sounded(defectCountChart(reference.circuitBoards.counts))).toEqual([6, 20])
    expect(sounded(defectCountChart(reference.waferDefects.counts))).toEqual([24])
    expect(sounded(proportionDefectiveChart(reference.defectiveFraction.counts, 50))).toEqual([15, 23])
    const { inputs } = reference.weightedAverage
    const average = weightedAverageChart(inputs.x, {
      weight: inputs.lambda,
      limits: 'time-varying',
      baseline: { kind: 'frozen', setBy: 'history', centre: inputs.target, processSigma: inputs.s },
    })
    expect(sounded(average)).toEqual([])
  })
})

describe('rules that mean nothing for a chart are set aside, and it is said', () => {
  test('a moving range is judged by its limits alone', () => {
    const movingRange = movingRangeChart([1, 2, 3, 4])
    const judged = judgeChart(movingRange, WESTERN_ELECTRIC_1956)
    expect(judged.rulesRun).toEqual(['western-electric-1'])
    expect(judged.rulesNotRun.map(({ ruleId }) => ruleId)).toEqual([
      'western-electric-2',
      'western-electric-3',
      'western-electric-4',
    ])
    expect(judged.rulesNotRun[0]!.because).toContain('share readings')
  })

  test('counts keep runs and trends, and lose the zones', () => {
    expect(judgeChart(defectCountChart([1, 2, 3]), NELSON_1984).rulesRun).toEqual([
      'nelson-1',
      'nelson-2',
      'nelson-3',
      'nelson-4',
    ])
  })

  test('individuals run them all', () => {
    expect(judgeChart(chartOf([0, 1]), ALL).rulesNotRun).toEqual([])
  })
})
