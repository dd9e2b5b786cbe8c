import { describe, expect, test } from 'vitest'
import {
  acceptableQualityLevel,
  inspectionLevel,
  reducedInspectionWanted,
  switchingEdition,
} from '@/shared/plan/parameters/evaluation-sampling'
import type { Lot } from '@/shared/records/lot'
import { inspectionState } from '@/shared/rules/evaluation/inspection-state'
import { allSeries } from '@/shared/sampling/sampled-series'
import { samplingSpecified } from '@/shared/sampling/sampling-of-lot'
import { samplingPlanRisk } from '@/shared/rules/evaluation/sampling-plan-risk'
import { rotaryDipWettingTime } from '@/shared/rules/evaluation/rotary-dip-wetting-time'
import { factsWith, findingOf, set, type FactsInput, type SetValue } from '../facts-builder'
import { boardConditions, boardPlan, lot, rotaryDip, timer, times } from '../lots-builder'

/** A year of lots, one every ten days; G is good and B has one slow specimen among twenty. */
const history = (outcomes: string, over: Partial<Lot> = {}): Lot[] =>
  [...outcomes].map((outcome, at) => {
    const day = new Date(Date.UTC(2026, 0, 6 + at)).toISOString().slice(0, 10)
    const code = `B-${String(at + 1).padStart(2, '0')}`
    const rows = outcome === 'G' ? times(20, 1) : [...times(19, 1), 5]
    const tests = outcome === '-' ? [] : [rotaryDip(rows, { testedOn: day, id: code })]
    return lot({ id: `${over.supplier ?? ''}${code}`, code, receivedOn: day, tests, ...over })
  })

const wanted = set(reducedInspectionWanted, true)
const findingWith = (lots: readonly Lot[], over: FactsInput & { with?: readonly SetValue[] } = {}) =>
  findingOf(inspectionState, {
    values: [...boardPlan, ...(over.with ?? [])],
    instruments: [timer],
    lots,
    ...over,
  })

// MIL-STD-105E 4.7 and 4.8 (read in a reproduction). The lots are tested to the tightened sample of
// 20, so every plan of the series can be judged.
describe('a supplier’s series', () => {
  test.each([
    ['', 'undetermined', 'No lot is recorded'],
    ['GGGG', 'meets', 'normal or reduced'],
    ['GGGGB', 'meets', 'normal or reduced'],
    ['BGGGGB', 'meets', 'normal or reduced'],
    ['GBGGB', 'marginal', 'tightened inspection after 5 lots, 2 rejected'],
    ['BB', 'marginal', 'tightened'],
    ['BBGGGG', 'marginal', 'tightened'],
    ['BBGGGGG', 'meets', 'normal or reduced'],
    ['BBBBBBB', 'fails', 'discontinued'],
  ] as const)('%s: %s', (outcomes, verdict, message) => {
    const finding = findingWith(history(outcomes))
    expect(finding.verdict).toBe(verdict)
    expect(finding.found).toContain(message)
  })
  test('ten good lots earn reduced inspection only where it is allowed', () => {
    const ten = history('GGGGGGGGGG')
    expect(findingWith(ten).working[0]?.result).toContain('normal inspection after 10 lots')
    expect(findingWith(ten, { with: [wanted] }).working[0]?.result).toContain(
      'reduced inspection after 10 lots',
    )
  })
  test('a rejection on reduced returns to normal', () => {
    const finding = findingWith(history('GGGGGGGGGGB'), { with: [wanted] })
    expect(finding.working[0]?.result).toContain('normal inspection after 11 lots')
  })
  test('by ISO 2859-1 the score of 30 takes fifteen lots on a zero plan', () => {
    const iso = [wanted, set(switchingEdition, 'ISO 2859-1')]
    const state = (count: number) => findingWith(history('G'.repeat(count)), { with: iso }).working[0]?.result
    expect(state(14)).toContain('normal inspection')
    expect(state(15)).toContain('reduced inspection')
  })
  test('says of every finding that ISO 2859-1 lends its switching, not its tables', () => {
    const iso = [set(switchingEdition, 'ISO 2859-1')]
    for (const rule of [inspectionState, rotaryDipWettingTime, samplingPlanRisk]) {
      const facts = { values: [...boardPlan, ...iso], instruments: [timer], lots: history('GG') }
      expect(findingOf(rule, facts).notes?.join()).toContain('those of the MIL-STD-105E tables')
      expect(findingOf(rule, { ...facts, values: boardPlan }).notes?.join()).not.toContain('ISO 2859-1 rules')
    }
  })
  test('an untested lot leaves the state as it was', () => {
    expect(findingWith(history('BB-')).verdict).toBe('marginal')
  })
  test('suppliers do not share a history', () => {
    const finding = findingWith([...history('BB'), ...history('GGG', { supplier: 'Southgate' })])
    expect(finding.parts?.map(({ verdict }) => verdict)).toEqual(['marginal', 'meets'])
  })
  test('results under other conditions do not count', () => {
    const unlike = history('BB').map((one) => ({
      ...one,
      tests: one.tests.map((old) => ({ ...old, conditions: { ...boardConditions, flux: 'process-flux' } })),
    }))
    expect(findingWith(unlike).verdict).toBe('undetermined')
  })
  test('the order of entry does not matter, the order of receipt does', () => {
    const lots = history('BBGGGGG')
    expect(findingWith([...lots].reverse()).verdict).toBe(findingWith(lots).verdict)
  })
})

describe('a discontinued series', () => {
  const action = {
    id: 'a',
    supplier: 'Northgate Circuits',
    part: 'bare board LX-41',
    acceptedOn: '2026-02-01',
    action: 'New tin bath.',
  }
  const stopped = history('BBBBBBB')
  test('resumes tightened once the supplier has acted', () => {
    const finding = findingWith(stopped, { records: { 'supplier-action': [action] } })
    expect(finding.verdict).toBe('marginal')
    expect(finding.found).toContain('The supplier has acted')
  })
  test('is not resumed by another’s action, or by one before it stopped', () => {
    const other = { ...action, supplier: 'Southgate' }
    const early = { ...action, acceptedOn: '2026-01-01' }
    expect(findingWith(stopped, { records: { 'supplier-action': [other, early] } }).verdict).toBe('fails')
  })
  test('no lot of it passes', () => {
    const lots = history('BBBBBBBG')
    const finding = findingOf(rotaryDipWettingTime, {
      values: boardPlan,
      instruments: [timer],
      lots: [...lots],
    })
    expect(finding.parts?.[7]?.verdict).toBe('fails')
    expect(finding.parts?.[7]?.found).toContain('discontinued')
  })
})

describe('the plan of the next lot', () => {
  const coming = lot({ id: 'next', code: 'B-99', receivedOn: '2026-06-01' })
  const planOf = (lots: readonly Lot[], code: string) =>
    allSeries(samplingSpecified(factsWith({ values: boardPlan, instruments: [timer], lots: [...lots] }))!)
      .flatMap((series) => series.lots)
      .find((one) => one.lot.code === code)
  test('grows from 13 to 20 pieces after two bad lots', () => {
    expect(planOf([...history('GG'), coming], 'B-99')?.plan).toMatchObject({
      sampleSize: 13,
      severity: 'normal',
    })
    expect(planOf([...history('BB'), coming], 'B-99')?.plan).toMatchObject({
      sampleSize: 20,
      severity: 'tightened',
    })
  })
  test('asks only about lots before it', () => {
    const early = { ...coming, receivedOn: '2026-01-06' }
    expect(planOf([...history('GBB'), early], 'B-99')?.inspection.severity).toBe('normal')
  })
})

// Reduced plans leave a gap: letter G at AQL 1.0, 20 pieces, accept 0, reject 2 (table II-C).
test('a count in the gap accepts the lot, barely, and ends reduced inspection', () => {
  const values = [...boardPlan, set(inspectionLevel, 'II'), set(acceptableQualityLevel, '1.0'), wanted]
  const good = history('GGGGGGGGGG').map((one) => ({
    ...one,
    tests: [rotaryDip(times(50, 1), { id: one.code })],
  }))
  const gap = lot({
    id: 'gap',
    code: 'B-11',
    receivedOn: '2026-02-20',
    tests: [rotaryDip([...times(19, 1), 5])],
  })
  const lots = [...good, gap]
  const finding = findingOf(rotaryDipWettingTime, { values, instruments: [timer], lots })
  expect(finding.verdict).toBe('marginal')
  expect(finding.found).toContain('accepted between the two numbers')
  const state = findingOf(inspectionState, { values, instruments: [timer], lots })
  expect(state.working[0]?.result).toContain('normal inspection after 11 lots, 0 rejected')
})
