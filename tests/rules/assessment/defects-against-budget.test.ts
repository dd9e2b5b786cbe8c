import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { budgetConfidenceMin } from '@/shared/plan/limits/assessment-inspection'
import { defectBudgetGuard } from '@/shared/plan/limits/assessment-guards'
import { defectFreeBoards, surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { defectRecord } from '@/shared/inspection/defect-record'
import { defectsAgainstBudget } from '@/shared/rules/assessment/defects-against-budget'
import { ratesByKind } from '@/shared/inspection/defect-summary'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { electrical, holes, inspection } from '../record-builder'

const judged = (joints: number, defectFreePct: number, input: FactsInput) =>
  findingOf(defectsAgainstBudget, {
    values: [
      set(surfaceMountJoints, 0),
      set(leadHoles, [holes(joints)]),
      set(defectFreeBoards, defectFreePct),
    ],
    ...input,
  })

describe('defects against the joint budget', () => {
  // Series model, published in many places: 99 % of 500-joint boards defect-free allows 20.1005 per million;
  // 90 % allows 210.699.
  test.each([
    [99, 20.1005],
    [90, 210.6988],
  ])('%s %% of boards with 500 joints leave %s per million', (pct, perMillion) => {
    expect(judged(500, pct, { inspections: [inspection('A-1', 500)] }).margin?.limit).toBeCloseTo(
      perMillion,
      3,
    )
  })

  // No defect shows a rate lower at every look once 2.98479439621386 (90 %) or 3.78841871996623 (95 %) were expected:
  // Robbins’ mixture integrated and solved with mpmath 1.3, apart from this code. A board of one joint, 95 % defect-free,
  // has a budget of 50 000 per million: 2.9848/0.05 = 59.7 and 3.7884/0.05 = 75.8 joints. For a single planned look
  // 45 and 59 would do (exact binomial, in many sampling tables).
  const seen = (count: number) => Array.from({ length: count }, (_, index) => inspection(`A-${index}`, 1))
  test('60 joints without a defect show 5 % at 90 %; 59 do not, and it asks for one more', () => {
    const requirements = [requirement(budgetConfidenceMin, 90, { relaxes: true })]
    const shown = judged(1, 95, { inspections: seen(60), requirements })
    expect(shown.verdict).toBe('marginal')
    expect(shown.margin?.found).toBeCloseTo((1e6 * 2.98479439621386) / 60, 4)
    const not = judged(1, 95, { inspections: seen(59), requirements })
    expect(not.verdict).toBe('undetermined')
    expect(not.missing).toEqual(['1 more joints without a defect'])
  })
  test('the usual 95 % confidence is shown by 76', () => {
    expect(judged(1, 95, { inspections: seen(75) }).verdict).toBe('undetermined')
    expect(judged(1, 95, { inspections: seen(76) }).verdict).toBe('marginal')
  })
  test('a wider guard makes more of it close', () => {
    expect(judged(1, 95, { inspections: seen(100) }).verdict).toBe('meets')
    const requirements = [requirement(defectBudgetGuard, 50)]
    expect(judged(1, 95, { inspections: seen(100), requirements }).verdict).toBe('marginal')
  })

  test('what it asks for is enough: with so many more good joints the budget is shown', () => {
    const first = judged(500, 90, { inspections: [inspection('A-1', 500, 1)] })
    expect(first.verdict).toBe('undetermined')
    const more = Number(/([\d\u202f]+) more joints/.exec(first.found)?.[1]?.replaceAll('\u202f', ''))
    const boards = Array.from({ length: Math.ceil(more / 500) }, (_, index) =>
      inspection(`B-${index}`, Math.min(500, more - index * 500)),
    )
    expect(judged(500, 90, { inspections: [inspection('A-1', 500, 1), ...boards] }).verdict).toMatch(
      /meets|marginal/,
    )
    const oneLess = [...boards.slice(0, -1), inspection('B-last', boards[boards.length - 1]!.jointsSeen - 1)]
    expect(judged(500, 90, { inspections: [inspection('A-1', 500, 1), ...oneLess] }).verdict).toBe(
      'undetermined',
    )
  })

  test('so many defects that the budget is surely exceeded fail', () => {
    const finding = judged(500, 90, { inspections: [inspection('A-1', 500, 3)] })
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toMatch(/budget is exceeded/)
  })

  test('surface-mount joints count to the board’s joints', () => {
    const values = [
      set(surfaceMountJoints, 0),
      set(leadHoles, [holes(100)]),
      set(surfaceMountJoints, 400),
      set(defectFreeBoards, 99),
    ]
    const finding = findingOf(defectsAgainstBudget, { values, inspections: [inspection('A-1', 500)] })
    expect(finding.margin?.limit).toBeCloseTo(20.1005, 3)
  })

  test('nothing inspected is undetermined, never shown', () => {
    expect(judged(500, 99, {}).verdict).toBe('undetermined')
    expect(judged(500, 99, { records: { 'electrical-test': [electrical()] } }).verdict).toBe('undetermined')
  })

  test('a look again at one assembly shows no new joints', () => {
    const looks = [inspection('A-1', 500), inspection('a-1 ', 500, 0, { id: 'again' })]
    expect(judged(500, 99, { inspections: looks }).found).toMatch(/0 of 500 joints/)
  })
})

describe('the record of defects', () => {
  test('a joint found by inspection and by test counts once; one found only by test joins', () => {
    const looks = [inspection('A-1', 500, 1), inspection('A-2', 500)]
    const tests = [
      electrical({
        assembly: 'A-1',
        tested: 1,
        passedFirst: 0,
        jointFailures: 1,
        joint: 'J1',
        defect: 'non-wetting',
      }),
      electrical({ id: 'e2', assembly: 'A-2', tested: 1, passedFirst: 0, jointFailures: 1, joint: 'J9' }),
    ]
    const record = defectRecord(looks, tests, 500)
    expect(record.defective).toBe(2)
    expect(record.defectiveJoints.map(({ joint, foundBy }) => [joint, foundBy])).toEqual([
      ['J1', 'inspection'],
      ['J9', 'electrical test'],
    ])
    expect(record.defectiveJoints[0]?.kinds).toEqual(['bridge', 'non-wetting'])
  })
  test('joints at fault without a name count all the same', () => {
    expect(
      defectRecord([inspection('A-1', 500)], [electrical({ passedFirst: 18, jointFailures: 3 })], 500),
    ).toMatchObject({
      defective: 3,
      unnamed: 3,
    })
  })
  test('more defective than seen is no rate', () => {
    const finding = judged(1, 95, {
      inspections: [inspection('A-1', 1)],
      records: { 'electrical-test': [electrical({ passedFirst: 10, jointFailures: 4 })] },
    })
    expect(finding.verdict).toBe('fails')
    expect(finding.remedy?.message).toMatch(/Record the inspections/)
  })
})

describe('rates by kind', () => {
  // Exact bounds of 1 in 10, two-sided 95 %: 0.002529 to 0.445016 (Clopper and Pearson; computed with an independent library).
  test('one joint in ten: 100 000 per million, 2 528.6 to 445 016', () => {
    const [rate] = ratesByKind(defectRecord([inspection('A-1', 10, 1)], [], 10), 0.95)
    expect(rate).toMatchObject({ kind: 'bridge', joints: 1, perMillion: 100_000 })
    expect(rate?.interval.lower).toBeCloseTo(2528.5785, 3)
    expect(rate?.interval.upper).toBeCloseTo(445_016.1, 0)
  })
})

test('law: one more defective joint never betters the verdict', () => {
  const order = ['meets', 'marginal', 'undetermined', 'fails']
  fc.assert(
    fc.property(fc.integer({ min: 10, max: 3000 }), fc.integer({ min: 0, max: 8 }), (joints, defects) => {
      const verdict = (count: number) =>
        order.indexOf(judged(3000, 60, { inspections: [inspection('A-1', joints, count)] }).verdict)
      expect(verdict(defects + 1)).toBeGreaterThanOrEqual(verdict(defects))
    }),
    { numRuns: 60 },
  )
})
