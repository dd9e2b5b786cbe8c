import { describe, expect, test } from 'vitest'
import {
  distinctCategoriesMin,
  gaugeShareMax,
  studyPartsMin,
} from '@/shared/plan/limits/evaluation-instruments'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import type { Instrument } from '@/shared/records/instrument'
import type { Lot } from '@/shared/records/lot'
import { studiedGauges, type GaugeReading } from '@/shared/instruments/gauge-study'
import { gaugesCapable } from '@/shared/rules/evaluation/gauges-capable'
import reference from '@/tests/reference/evaluation/gauge-study.json'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { lot, needed, rejected, testOf } from '../lots-builder'

const gauge: Instrument = {
  id: 'i-x',
  tag: 'X-3',
  measures: 'coating thickness',
  calibratedOn: '2026-01-05',
  dueOn: '2026-07-05',
  certificate: 'C-2210',
  outOfUse: false,
}

const studyOf = (
  values: Readonly<Record<string, readonly (readonly number[])[]>>,
  study = 'S-1',
): GaugeReading[] =>
  Object.entries(values).flatMap(([appraiser, trials]) =>
    trials.flatMap((readings, trial) =>
      readings.map((reading, part) => ({
        id: `${study}${appraiser}${trial}${part}`,
        study,
        instrumentTag: 'X-3',
        part: `p${part + 1}`,
        appraiser,
        trial: trial + 1,
        reading,
      })),
    ),
  )
/** Ten parts far apart, measured by two people who hardly differ. */
const sharp = studyOf({
  A: [0, 1].map((trial) => Array.from({ length: 10 }, (_, part) => part + 0.01 * trial)),
  B: [0, 1].map((trial) => Array.from({ length: 10 }, (_, part) => part + 0.02 + 0.01 * trial)),
})
const measured = lot({ tests: [testOf('plating-thickness', [], { instrumentId: 'i-x' })] })
const findingWith = (studies: readonly GaugeReading[], over: FactsInput & { lots?: readonly Lot[] } = {}) =>
  findingOf(gaugesCapable, { instruments: [gauge], records: { 'gauge-reading': studies }, ...over })

// Measurement Systems Analysis, 4th edition (AIAG): 10 parts, 3 people, 3 trials.
describe('the worked example of ten parts', () => {
  const example = studyOf(reference.readings)
  const [studied] = studiedGauges(example)
  test('by analysis of variance, interaction pooled (computed with R)', () => {
    if (!studied || 'incomplete' in studied.result) throw new Error('the study is complete')
    const { byVariance, figures } = studied.result
    expect(byVariance.repeatability).toBeCloseTo(reference.computedByVariance.sd.EV, 8)
    expect(byVariance.reproducibility).toBeCloseTo(reference.computedByVariance.sd.AV, 8)
    expect(byVariance.gauge).toBeCloseTo(reference.computedByVariance.sd.GRR, 8)
    expect(byVariance.parts).toBeCloseTo(reference.computedByVariance.sd.PV, 8)
    expect(figures.gaugeShareOfTotalPct).toBeCloseTo(reference.computedByVariance.gaugeSharePct, 5)
  })
  test('by averages and ranges (published)', () => {
    if (!studied || 'incomplete' in studied.result) throw new Error('the study is complete')
    expect(studied.result.byRanges?.gauge).toBeCloseTo(reference.publishedByRanges.GRR, 3)
    expect(studied.result.byRanges?.repeatability).toBeCloseTo(reference.publishedByRanges.EV, 3)
  })
  test('27.9 % is inside 30 %, but four categories are too few: ranges would have said five', () => {
    const finding = findingWith(example)
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toContain('27.9 % of the study’s')
    expect(finding.found).toContain('4 categories')
    const four = [requirement(distinctCategoriesMin, 4, { relaxes: true })]
    expect(findingWith(example, { requirements: four }).verdict).toBe('marginal')
  })
  test('a stricter contract', () => {
    const requirements = [requirement(gaugeShareMax, 10)]
    expect(findingWith(example, { requirements }).verdict).toBe('fails')
    expect(findingWith(sharp, { requirements }).verdict).toBe('meets')
  })
  test('names the tests that rest on a gauge that fails', () => {
    expect(findingWith(example, { lots: [measured] }).found).toContain(
      'used for lot B-01, plating-thickness of 2026-02-09',
    )
    const gone = lot({ ...measured, disposition: rejected })
    expect(findingWith(example, { lots: [gone] }).found).not.toContain('used for')
  })
})

describe('a study', () => {
  test('of a sharp gauge meets', () => {
    expect(findingWith(sharp).verdict).toBe('meets')
  })
  test.each([
    ['with a reading missing', sharp.slice(1), '1 of 40 readings are missing'],
    ['with a reading twice', [...sharp, sharp[0]!], 'entered twice'],
    ['of one person', sharp.filter(({ appraiser }) => appraiser === 'A'), 'two people'],
    ['of readings all alike', sharp.map((one) => ({ ...one, reading: 1 })), 'too coarse'],
  ])('%s is open', (_, rows, message) => {
    const finding = findingWith(rows)
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain(message)
  })
  test('each study is judged apart', () => {
    const dull = studyOf(reference.readings, 'S-2')
    expect(findingWith([...sharp, ...dull]).parts?.map(({ verdict }) => verdict)).toEqual(['meets', 'fails'])
  })
})

test('a thickness gauge nobody studied leaves its readings open', () => {
  const finding = findingWith([], { lots: [measured] })
  expect(finding.verdict).toBe('undetermined')
  expect(finding.found).toContain('no gauge study')
})
test('no study and no thickness: nothing rests on a gauge', () => {
  const values = [set(lotsNeeded, [needed('bare board LX-41', 'bare board', 'rotary-dip')])]
  expect(findingWith([], { values, lots: [lot()] }).verdict).toBe('not applicable')
  // Which lots are to be measured nobody has said yet.
  expect(findingWith([], { lots: [lot()] }).missing).toEqual([lotsNeeded.label])
})
test('thickness that is to be measured wants a study', () => {
  const values = [set(lotsNeeded, [needed('bare board LX-41', 'bare board', 'plating-thickness')])]
  expect(findingWith([], { values }).verdict).toBe('undetermined')
})
// Ten parts by two or three people: Measurement Systems Analysis, 4th edition (AIAG), from memory.
test('three pieces are no study, and how many are missing is said', () => {
  const three = sharp.filter(({ part }) => ['p1', 'p2', 'p3'].includes(part))
  const finding = findingWith(three)
  expect(finding.verdict).toBe('undetermined')
  expect(finding.remedy?.message).toBe('Add 7 more pieces to the study.')
  const relaxed = [requirement(studyPartsMin, 3, { relaxes: true })]
  expect(findingWith(three, { requirements: relaxed }).verdict).toBe('meets')
})
