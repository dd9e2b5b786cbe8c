import { describe, expect, test } from 'vitest'
import { reworkSummary } from '@/shared/inspection/rework-summary'
import { reworkHeatsMax } from '@/shared/plan/limits/assessment-rework'
import { workingHourCost } from '@/shared/plan/parameters/assessment-proof'
import type { RecordOf } from '@/shared/records/record-kinds'
import { inspectorsTrained } from '@/shared/rules/assessment/inspectors-trained'
import { reworkLimits } from '@/shared/rules/assessment/rework-limits'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { inspection } from '../record-builder'

const rework = (heats: number, over: Partial<RecordOf<'rework'>> = {}): RecordOf<'rework'> => ({
  id: `w-${heats}`,
  doneOn: '2026-02-11',
  worker: 'A. Ward',
  assembly: 'A-1',
  joint: 'J1',
  defect: 'bridge',
  heats,
  minutes: 6,
  material: undefined,
  ...over,
})
const judged = (rows: RecordOf<'rework'>[], over: FactsInput = {}) =>
  findingOf(reworkLimits, { records: { rework: rows }, ...over })

describe('rework', () => {
  // Three heats a joint: common practice, no published source.
  test('three heats are allowed, whether in one visit or several; a fourth is not', () => {
    expect(judged([rework(3)]).verdict).toBe('meets')
    expect(judged([rework(2), rework(1, { id: 'b', joint: ' j1' })]).verdict).toBe('meets')
    const finding = judged([rework(2), rework(2, { id: 'b', joint: 'j1 ' })])
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toMatch(/J1 on A-1: heated 4 times in 2 visits/)
  })
  test('the same designation on another assembly is another joint', () => {
    expect(judged([rework(3), rework(3, { id: 'b', assembly: 'A-2' })]).verdict).toBe('meets')
  })
  test('a customer may allow fewer', () => {
    expect(judged([rework(2)], { requirements: [requirement(reworkHeatsMax, 1)] }).verdict).toBe('fails')
  })
  test('costs are hours at their price and material: 12 minutes at 50 and 1.5 are 11.5', () => {
    const rows = [rework(1, { material: 1.5 }), rework(1, { id: 'b', joint: 'J2' })]
    expect(reworkSummary(rows, 50)).toMatchObject({ visits: 2, minutes: 12, cost: 11.5 })
    expect(judged(rows, { values: [set(workingHourCost, 50)] }).found).toMatch(/11\.5/)
  })
  test('none is none; a defect that nobody mended is named', () => {
    expect(judged([]).verdict).toBe('not applicable')
    const open = judged([], { inspections: [inspection('A-1', 10, 2)] })
    expect(open.verdict).toBe('marginal')
    expect(open.found).toMatch(/2 defective joints have no rework on record/)
    expect(judged([rework(1)], { inspections: [inspection('A-1', 10, 1)] }).verdict).toBe('meets')
  })
})

describe('inspectors and reworkers', () => {
  const passed = (worker: string, skill: string, expiresOn = '2027-01-31') => ({
    id: `${worker}-${skill}`,
    worker,
    skill,
    passedOn: '2025-06-01',
    expiresOn,
    certificate: 'C-1',
  })
  const judgedPeople = (training: ReturnType<typeof passed>[], rows: RecordOf<'rework'>[] = []) =>
    findingOf(inspectorsTrained, {
      inspections: [inspection('A-1', 10)],
      records: { training, rework: rows },
    })
  test('the inspector must have been current on the day', () => {
    expect(judgedPeople([passed('C. Hale', 'inspection')]).verdict).toBe('meets')
    expect(judgedPeople([passed('C. Hale', 'inspection', '2026-02-09')]).verdict).toBe('fails')
    expect(judgedPeople([passed('C. Hale', 'rework')]).verdict).toBe('fails')
    expect(judgedPeople([]).found).toMatch(/C\. Hale, visual inspection: no training is recorded/)
  })
  test('so must the reworker', () => {
    const inspector = passed('C. Hale', 'inspection')
    expect(judgedPeople([inspector], [rework(1)]).verdict).toBe('fails')
    expect(judgedPeople([inspector, passed('A. Ward', 'rework')], [rework(1)]).verdict).toBe('meets')
  })
  test('without an inspection it cannot be told', () => {
    expect(findingOf(inspectorsTrained).verdict).toBe('undetermined')
  })
})
