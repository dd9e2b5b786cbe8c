import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { chartRules } from '@/shared/plan/parameters/control-charts'
import { defectCharts, type DefectChartKey } from '@/shared/plan/parameters/defect-charts'
import { addDays } from '@/shared/quantity/calendar'
import type { Inspection } from '@/shared/records/inspection'
import type { DefectSignalAnswer } from '@/shared/charts/defect-signal-answers'
import { defectChart } from '@/shared/charts/defect-chart'
import { defectSignals } from '@/shared/charts/defect-signals'
import { defectSignalsAnswered } from '@/shared/rules/assessment/defect-signals-answered'
import { RUN_RULE_SETS } from '@/shared/charts/run-rule-sets'
import reference from '@/tests/reference/statistics/control-charts.json'
import { findingOf, set, type SetValue } from '../facts-builder'
import { inspection } from '../record-builder'

const on = (index: number): string => addDays('2026-01-01', index)
const boards = (counts: readonly number[]): Inspection[] =>
  counts.map((defects, index) => inspection(`S-${index + 1}`, 1000, defects, { inspectedOn: on(index) }))
const answer = (over: Partial<DefectSignalAnswer> = {}): DefectSignalAnswer => ({
  id: 'a',
  chart: 'c',
  chartRule: 'western-electric-1',
  sample: 'S-6',
  inspectedOn: on(5),
  answer: 'cause-removed',
  cause: 'a new inspector did not know a kind of defect',
  action: 'trained; samples looked at again',
  by: 'Q. Aldous',
  on: on(6),
  ...over,
})
const charts = (...keys: readonly DefectChartKey[]): SetValue =>
  set(
    defectCharts,
    keys.map((chart) => ({ chart, baselineFrom: undefined, baselineTo: undefined })),
  )
const C_CHART = charts('c')
const judged = (
  inspections: readonly Inspection[],
  answers: readonly DefectSignalAnswer[] = [],
  values: readonly SetValue[] = [C_CHART],
) => findingOf(defectSignalsAnswered, { inspections, values, records: { 'defect-signal-answer': answers } })

// Montgomery (1991), pp. 173–175: 26 samples of a hundred printed boards; samples 6 (low) and 20 (high) lie outside.
const PRINTED_BOARDS = boards(reference.circuitBoards.counts)

describe('signals of the charts of defects', () => {
  test('both samples outside need an answer, and each answer counts for its own', () => {
    const finding = judged(PRINTED_BOARDS)
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toContain('2 of 2 signals unanswered')
    expect(finding.remedy?.message).toContain('S-6')
    const one = judged(PRINTED_BOARDS, [answer()])
    expect(one.verdict).toBe('fails')
    expect(one.remedy?.message).toContain('S-20')
    const both = judged(PRINTED_BOARDS, [answer(), answer({ sample: 'S-20', inspectedOn: on(19) })])
    expect(both.verdict).toBe('meets')
  })
  test.each([{ chart: 'u' as const }, { chartRule: 'nelson-1' }, { sample: 'S-7' }, { inspectedOn: on(6) }])(
    'an answer to something else does not count: %o',
    (over) => {
      const rest = answer({ sample: 'S-20', inspectedOn: on(19) })
      expect(judged(PRINTED_BOARDS, [answer(over), rest]).verdict).toBe('fails')
    },
  )
  test('a run on one side is asked about only where the programme wants the zone rules', () => {
    const drifting = boards([...Array<number>(10).fill(9), ...Array<number>(10).fill(11)])
    expect(judged(drifting).verdict).toBe('meets')
    const zones = [C_CHART, set(chartRules, 'zones')]
    expect(judged(drifting, [], zones).found).toContain('eight points in a row on one side')
  })
  test('every chart that the specification names is asked about', () => {
    const finding = judged(PRINTED_BOARDS, [], [charts('c', 'u')])
    expect(finding.parts?.map(({ verdict }) => verdict)).toEqual(['fails', 'fails'])
  })
})

describe('where there is no chart', () => {
  test('without an inspection the question is open', () => {
    expect(judged([]).verdict).toBe('undetermined')
  })
  test('too few samples, or none with a defect, have no chart to answer, and nothing is said to meet', () => {
    expect(judged(boards([4, 0, 9]), [], []).verdict).toBe('not applicable')
    expect(judged(boards(Array<number>(30).fill(0))).verdict).toBe('not applicable')
  })
  test('a chart that the specification names is asked for: too few samples leave it open, with how many more', () => {
    const finding = judged(boards([4, 0, 9]))
    expect(finding.verdict).toBe('undetermined')
    expect(finding.remedy?.message).toBe('Inspect on: 5 more samples of this chart.')
  })
  test('a chart that does not suit the samples is no answer: another must be named', () => {
    const uneven = PRINTED_BOARDS.map((one, index) => ({ ...one, jointsSeen: 1000 + index }))
    const finding = judged(uneven)
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('u chart')
  })
  test('where nothing is named the u chart by day is answered for', () => {
    const finding = judged(PRINTED_BOARDS, [], [])
    expect(finding.parts?.[0]?.subject).toContain('by day')
    expect(finding.verdict).toBe('fails')
  })
})

test('whatever is found, answering all that is asked mends it, and one less does not', () => {
  fc.assert(
    fc.property(fc.array(fc.nat({ max: 30 }), { minLength: 8, maxLength: 40 }), (counts) => {
      const looks = boards(counts)
      const choice = { chart: 'c', phases: [] } as const
      const asked = defectSignals(defectChart(looks, choice, RUN_RULE_SETS.limits.asked), choice, 'limits')
      const answers = asked.map(({ chartRule, sample, inspectedOn }) =>
        answer({ chartRule, sample, inspectedOn }),
      )
      expect(judged(looks, answers).verdict).toBe('meets')
      if (asked.length > 0) expect(judged(looks, answers.slice(1)).verdict).toBe('fails')
    }),
  )
})
