import { describe, expect, test } from 'vitest'
import {
  firstPassYieldMin,
  inspectedJointsMin,
  magnificationMax,
} from '@/shared/plan/limits/assessment-inspection'
import { magnificationFor } from '@/shared/materials/inspection-magnification'
import { inspectedAssembliesShare } from '@/shared/plan/parameters/assessment-inspection'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { firstPassYield } from '@/shared/rules/assessment/first-pass-yield'
import { inspectionCoverage } from '@/shared/rules/assessment/inspection-coverage'
import { inspectionMagnification } from '@/shared/rules/assessment/inspection-magnification'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { electrical, holes, inspection, run } from '../record-builder'

describe('coverage', () => {
  const judged = (
    share: number,
    made: number,
    looks: ReturnType<typeof inspection>[],
    over: FactsInput = {},
  ) =>
    findingOf(inspectionCoverage, {
      values: [
        set(inspectedAssembliesShare, share),
        set(surfaceMountJoints, 0),
        set(leadHoles, [holes(120)]),
      ],
      inspections: looks,
      records: { 'soldering-run': [run(made)] },
      ...over,
    })
  const boards = (count: number, joints = 120) =>
    Array.from({ length: count }, (_, index) => inspection(`A-${index}`, joints))

  test('all of ten, and one short of all', () => {
    expect(judged(100, 10, boards(10)).verdict).toBe('meets')
    const short = judged(100, 10, boards(9))
    expect(short.verdict).toBe('fails')
    expect(short.remedy?.message).toMatch(/Inspect 1 more/)
  })
  test('a share is rounded up: 20 % of 11 are 3', () => {
    expect(judged(20, 11, boards(2)).verdict).toBe('fails')
    expect(judged(20, 11, boards(3)).verdict).toBe('meets')
  })
  test('an assembly looked at twice is one assembly', () => {
    expect(judged(100, 2, [inspection('A-1', 120), inspection('A-1', 120)]).verdict).toBe('fails')
  })
  test('119 of 120 joints are not all; two partial looks may have seen the same joints', () => {
    expect(judged(100, 1, boards(1, 119)).verdict).toBe('fails')
    expect(judged(100, 1, [inspection('A-1', 70), inspection('A-1', 50)]).verdict).toBe('fails')
    expect(judged(100, 1, [inspection('A-1', 70), inspection('A-1', 120)]).verdict).toBe('meets')
    const requirements = [requirement(inspectedJointsMin, 99, { authority: 'customer', relaxes: true })]
    expect(judged(100, 1, boards(1, 119), { requirements }).verdict).toBe('meets')
  })
  test('29 of 100 joints are 29 %, whatever binary fractions make of it', () => {
    expect((29 / 100) * 100).toBeLessThan(29)
    const values = [
      set(inspectedAssembliesShare, 100),
      set(surfaceMountJoints, 0),
      set(leadHoles, [holes(100)]),
    ]
    const requirements = [requirement(inspectedJointsMin, 29, { authority: 'customer', relaxes: true })]
    expect(judged(100, 1, boards(1, 29), { values, requirements }).verdict).toBe('meets')
    expect(judged(100, 1, boards(1, 28), { values, requirements }).verdict).toBe('fails')
  })
  test('nothing made is undetermined', () => expect(judged(100, 0, boards(1)).verdict).toBe('undetermined'))
  test('boards that pass a wave and a bench are made once', () => {
    const records = { 'soldering-run': [run(10), run(10, { id: 'r2', skill: 'hand-soldering' })] }
    expect(judged(100, 10, boards(10), { records }).verdict).toBe('meets')
  })
})

describe('magnification', () => {
  const judged = (magnification: number, landMm = 1.8, over: FactsInput = {}) =>
    findingOf(inspectionMagnification, {
      values: [set(surfaceMountJoints, 0), set(leadHoles, [holes(120, { landMm })])],
      inspections: [inspection('A-1', 120, 0, { magnification })],
      ...over,
    })
  // IPC-A-610 by land width (from memory): above 1.0 mm 1.5 to 3 times; common practice: 10 times at most.
  test.each([
    [1.8, 1.5, 'meets'],
    [1.8, 3, 'meets'],
    [1.8, 1.4, 'fails'],
    [1.8, 10, 'marginal'],
    [1.8, 10.1, 'fails'],
    [0.8, 2, 'fails'],
    [0.8, 7.5, 'meets'],
    [0.4, 10, 'meets'],
    [0.4, 7, 'fails'],
  ])('lands of %s mm at %s×: %s', (land, power, verdict) => expect(judged(power, land).verdict).toBe(verdict))
  test('the narrowest land decides', () => {
    const values = [set(surfaceMountJoints, 0), set(leadHoles, [holes(100), holes(20, { landMm: 0.9 })])]
    expect(judged(2, 1.8, { values }).verdict).toBe('fails')
  })
  test('the referee power for a doubt is said', () => expect(judged(3).notes?.join()).toMatch(/up to 4 ×/))
  // IPC-A-610E as copied in a board maker's standard: 0.25 to 0.5 mm at 10×, referee 20×; below 0.25 mm 20×, referee 40×.
  test('a land of just 0.25 mm belongs to those of 0.25 to 0.5 mm', () => {
    expect(magnificationFor(0.25)).toMatchObject({ min: 7.5, max: 10, referee: 20 })
    expect(magnificationFor(0.249)).toMatchObject({ min: 20, referee: 40 })
    expect(magnificationFor(0.5)).toMatchObject({ max: 10, referee: 20 })
    expect(magnificationFor(1)).toMatchObject({ min: 3, referee: 10 })
  })
  test('a customer’s ceiling of 4× rules', () => {
    expect(judged(5, 1.8, { requirements: [requirement(magnificationMax, 4)] }).verdict).toBe('fails')
  })
})

describe('first-pass yield', () => {
  const judged = (rows: ReturnType<typeof electrical>[], over: FactsInput = {}) =>
    findingOf(firstPassYield, { records: { 'electrical-test': rows }, ...over })
  // Exact bounds of Clopper and Pearson (1934), one-sided 95 %, from the beta quantiles of scipy 1.17, apart from this code.
  test('90 of 100 is 94.5 % at most, below 95', () => {
    const finding = judged([electrical({ tested: 100, passedFirst: 90, jointFailures: 4 })])
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toMatch(/90 of 100/)
    expect(finding.margin?.found).toBeCloseTo(94.473676231713, 8)
  })
  test('97 of 100 is 92.4 % at least: not shown, and 53 more good boards would show it', () => {
    const rows = [electrical({ tested: 100, passedFirst: 97 })]
    const finding = judged(rows)
    expect(finding.verdict).toBe('undetermined')
    expect(finding.margin?.found).toBeCloseTo(92.428920625017, 8)
    expect(finding.missing).toEqual(['53 more boards that pass at first'])
    const more = (count: number) => electrical({ id: 'e2', tested: count, passedFirst: count })
    expect(judged([...rows, more(53)]).verdict).toBe('meets')
    expect(judged([...rows, more(52)]).verdict).toBe('undetermined')
    expect(judged(rows, { requirements: [requirement(firstPassYieldMin, 99.5)] }).verdict).toBe('fails')
  })
  // 0.95^59 < 0.05 < 0.95^58: the sample without a failure of many tables.
  test('one of one shows nothing; 59 of 59 show 95 % at 95 %', () => {
    const all = (count: number) => judged([electrical({ tested: count, passedFirst: count })]).verdict
    expect(all(1)).toBe('undetermined')
    expect(all(58)).toBe('undetermined')
    expect(all(59)).toBe('meets')
  })
  test('more passed than tested is refused', () => {
    expect(judged([electrical({ tested: 10, passedFirst: 11 })]).verdict).toBe('fails')
  })
  test('a bad month shows though the whole is good', () => {
    const finding = judged([
      electrical({ tested: 1000, passedFirst: 1000, testedOn: '2026-01-10' }),
      electrical({ id: 'e2', tested: 20, passedFirst: 16 }),
    ])
    expect(finding.verdict).toBe('marginal')
    expect(finding.parts?.map(({ subject, verdict }) => [subject, verdict])).toEqual([
      ['2026-01', 'meets'],
      ['2026-02', 'marginal'],
    ])
  })
  test('no test is undetermined', () => expect(judged([]).verdict).toBe('undetermined'))
})
