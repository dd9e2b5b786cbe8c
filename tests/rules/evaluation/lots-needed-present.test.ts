import { describe, expect, test } from 'vitest'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { namesComponent } from '@/shared/records/lot-identity'
import { lotsNeededPresent } from '@/shared/rules/evaluation/lots-needed-present'
import { findingOf, set, unchecked, type FactsInput } from '../facts-builder'
import { accepted, boardPlan, lot, needed, rejected, rotaryDip, stated, testOf, timer } from '../lots-builder'

const findingWith = (over: FactsInput) =>
  findingOf(lotsNeededPresent, { values: boardPlan, instruments: [timer], ...over })
const tested = lot({ tests: [rotaryDip([1])], disposition: accepted })

describe('a part of the plan', () => {
  test('with a tested and accepted lot is settled', () => {
    expect(findingWith({ lots: [tested] }).verdict).toBe('meets')
  })
  test.each([
    ['no lot', [], 'no lot is recorded'],
    ['an untested lot', [lot({ disposition: accepted })], 'no result that counts by rotary dip'],
    [
      'a test without an instrument',
      [lot({ disposition: accepted, tests: [rotaryDip([1], { instrumentId: null })] })],
      'no result that counts by rotary dip',
    ],
    [
      'a test without a reading',
      [lot({ disposition: accepted, tests: [rotaryDip([])] })],
      'no result that counts by rotary dip',
    ],
    ['a lot nobody disposed of', [lot({ tests: [rotaryDip([1])] })], 'not yet disposed of'],
  ])('%s leaves it open', (_, lots, message) => {
    const finding = findingWith({ lots })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain(message)
    expect(finding.missing?.length).toBe(1)
  })
  test('every lot rejected: another is needed', () => {
    expect(findingWith({ lots: [lot({ disposition: rejected })] }).verdict).toBe('fails')
  })
  test('one rejected beside one accepted is settled', () => {
    expect(
      findingWith({ lots: [lot({ id: 'x', code: 'B-00', disposition: rejected }), tested] }).verdict,
    ).toBe('meets')
  })
  test('a lot of another kind by the same name does not serve', () => {
    expect(findingWith({ lots: [{ ...tested, kind: 'coupon' }] }).verdict).toBe('undetermined')
  })
})

describe('what the plan forgot', () => {
  const withHoles = (...components: string[]) =>
    unchecked(
      leadHoles,
      components.map((component) => ({ component }) as LeadHole),
    )
  test('a component of the hole table', () => {
    const finding = findingWith({ values: [...boardPlan, withHoles('T1', 'T1')], lots: [tested] })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('T1: stands in the hole table')
    expect(finding.parts?.length).toBe(2)
  })
  test('a component that a row names is not forgotten', () => {
    const rows = [
      needed('bare board LX-41', 'bare board', 'rotary-dip'),
      needed('transformer T1', 'component', 'dip-and-look'),
    ]
    const component = lot({
      id: 'T',
      kind: 'component',
      part: 'Transformer T1',
      tests: [testOf('dip-and-look', [{ specimen: 's1', coveragePct: 99 }])],
      disposition: accepted,
    })
    const conditions = (['rotary-dip', 'dip-and-look'] as const).map((method) => stated(method))
    const values = [...boardPlan, set(lotsNeeded, rows), set(testConditions, conditions), withHoles('T1')]
    expect(findingWith({ values, lots: [tested, component] }).verdict).toBe('meets')
  })
  test('the board itself', () => {
    const values = [...boardPlan, set(lotsNeeded, [needed('T1', 'component', 'dip-and-look')])]
    expect(findingWith({ values }).parts?.map(({ subject }) => subject)).toContain('bare board')
  })
  test('a solderability test of something that is soldered', () => {
    const values = [
      ...boardPlan,
      set(lotsNeeded, [needed('bare board LX-41', 'bare board', 'plating-thickness')]),
    ]
    expect(findingWith({ values, lots: [tested] }).found).toContain('no solderability test')
  })
})

test.each([
  ['transformer T1', 'T1', true],
  ['T1 transformer', 't1', true],
  ['T1', 'T1', true],
  ['transformer T12', 'T1', false],
  ['T12', 'T1', false],
])('“%s” names component %s: %s', (part, component, names) => {
  expect(namesComponent(part, component)).toBe(names)
})
