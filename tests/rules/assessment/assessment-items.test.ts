import { describe, expect, test } from 'vitest'
import { mayStayEmpty } from '@/shared/catalogue/standard-plan'
import { assessmentItems } from '@/shared/catalogue/assessment-items'
import { defectSummary } from '@/shared/inspection/defect-summary'
import { electrical, inspection } from '../record-builder'

describe('the assessment stage', () => {
  test('few values must be filled in before the gate', () => {
    const must = assessmentItems.flatMap((item) => item.parameters).filter((one) => !mayStayEmpty(one))
    expect(must.map(({ key }) => key)).toEqual(['inspected-assemblies-share'])
  })
})

describe('the summary of defects', () => {
  // Exact two-sided 95 % bounds of 1 in 10: 0.002529 to 0.445016 (Clopper and Pearson; computed with an independent library).
  test('one in ten, in all and by kind', () => {
    const summary = defectSummary([inspection('A-1', 10, 1)])
    expect(summary).toMatchObject({ assembliesSeen: 1, jointsSeen: 10, defectiveJoints: 1 })
    expect(summary.rate?.perMillion).toBe(100_000)
    expect(summary.rate?.interval.lower).toBeCloseTo(2528.5785, 3)
    expect(summary.byKind.map(({ kind, joints }) => [kind, joints])).toEqual([['bridge', 1]])
  })
  test('nothing seen, or more at fault than seen, has no rate', () => {
    expect(defectSummary([]).rate).toBeUndefined()
    const tests = [electrical({ passedFirst: 10, jointFailures: 5 })]
    expect(defectSummary([inspection('A-1', 2)], { tests }).rate).toBeUndefined()
  })
  test('two partial looks may have seen the same joints: the larger counts, and no more than the board has', () => {
    const looks = [inspection('A-1', 8), inspection('A-1', 6)]
    expect(defectSummary(looks, { jointsOnBoard: 10 }).jointsSeen).toBe(8)
    expect(defectSummary([inspection('A-1', 12)], { jointsOnBoard: 10 }).jointsSeen).toBe(10)
  })
})
