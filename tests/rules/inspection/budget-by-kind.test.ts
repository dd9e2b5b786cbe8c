import { describe, expect, test } from 'vitest'
import { boardOutline } from '@/shared/inspection/board-outline'
import { defectRecord } from '@/shared/inspection/defect-record'
import { yieldSteps } from '@/shared/inspection/yield-steps'
import { budgetByKind } from '@/shared/inspection/budget-by-kind'
import { electrical, inspection } from '../record-builder'

describe('each kind against the whole budget', () => {
  const asked = { jointsOnBoard: 500, defectFreeBoards: 0.9, confidence: 0.95 }
  // Series model, published in many places: 90 % of 500-joint boards defect-free allows 210.699 per million.
  // The mixture integrated numerically and solved with mpmath 1.3, apart from this code: one event shows a rate lower
  // once 6.6572281932654 were expected, three show it higher up to 0.3676310537783.
  test('all together first, with bounds good at every look and the budget of the specification', () => {
    const [all, bridges] = budgetByKind(defectRecord([inspection('A-1', 100, 3)], [], 500), asked)
    expect(all).toMatchObject({ kind: 'all kinds together', joints: 3, perMillion: 30_000, share: 1 })
    expect(all?.status.budgetPerMillion).toBeCloseTo(210.699, 3)
    expect(all?.interval.lower).toBeCloseTo(3676.310537783, 5)
    const [one] = budgetByKind(defectRecord([inspection('A-1', 10, 1)], [], 500), asked)
    expect(one?.interval.upper).toBeCloseTo(665_722.81932654, 4)
    expect(bridges).toMatchObject({ kind: 'bridge', joints: 3 })
    expect(all?.status.status).toBe('exceeded')
  })
  test('a joint found only electrically is among them, under its kind or under none', () => {
    const named = electrical({
      tested: 1,
      passedFirst: 0,
      jointFailures: 1,
      joint: 'C7-2',
      defect: 'non-wetting',
    })
    const unnamed = electrical({ id: 'e2', tested: 5, passedFirst: 4, jointFailures: 1 })
    const rows = budgetByKind(defectRecord([inspection('A-1', 500, 1)], [named, unnamed], 500), asked)
    expect(rows.map(({ kind, joints }) => [kind, joints])).toEqual([
      ['all kinds together', 3],
      ['bridge', 1],
      ['kind not said', 1],
      ['non-wetting', 1],
    ])
  })
  // One defect shows 5 % at 95 % in 134 joints, 6.6572 expected (as above); a board of one joint.
  test('a kind alone may be shown while all together are not', () => {
    const looks = [inspection('A-1', 140, 1)]
    const rows = budgetByKind(
      defectRecord(looks, [electrical({ passedFirst: 19, jointFailures: 4 })], undefined),
      {
        jointsOnBoard: 1,
        defectFreeBoards: 0.95,
        confidence: 0.95,
      },
    )
    expect(rows.map(({ kind, status }) => [kind, status.status])).toEqual([
      ['all kinds together', 'not shown'],
      ['kind not said', 'not shown'],
      ['bridge', 'shown'],
    ])
    expect(rows[0]!.status.jointsStillToSee).toBeGreaterThan(rows[1]!.status.jointsStillToSee)
  })
  test('nothing seen gives no row', () => expect(budgetByKind(defectRecord([], [], 500), asked)).toEqual([]))
})

describe('yields step by step', () => {
  // Definition with worked figures (computed): 0.9 · 0.8 = 0.72. Exact bounds of 9 in 10 mirror those of 1 in 10.
  test('first looks, electrical test, and the two rolled', () => {
    const looks = Array.from({ length: 10 }, (_, index) => inspection(`A-${index}`, 100, index === 0 ? 2 : 0))
    const { steps, rolled } = yieldSteps(looks, [electrical({ tested: 20, passedFirst: 16 })], 0.95)
    expect(steps.map(({ passed, entered }) => [passed, entered])).toEqual([
      [9, 10],
      [16, 20],
    ])
    expect(steps[0]?.interval.upper).toBeCloseTo(1 - 0.0025285785, 8)
    expect(rolled).toBeCloseTo(0.72, 12)
  })
  test('a second look after rework does not mend the first', () => {
    const looks = [inspection('A-1', 100, 1), inspection('a-1', 100)]
    expect(yieldSteps(looks, [], 0.95).steps).toMatchObject([{ passed: 0, entered: 1 }])
  })
  test('nothing entered has no yield', () => expect(yieldSteps([], [], 0.95).rolled).toBeUndefined())
})

describe('the board defects are placed on', () => {
  const placed = [inspection('A-1', 9, 0, { defects: [{ kind: 'bridge', joint: 'J1', xMm: 40, yMm: 25 }] })]
  test('as specified, else as the cleanliness test measured it, else around the defects', () => {
    const tests = [{ lengthMm: 120, widthMm: 80 }]
    expect(boardOutline({ lengthMm: 160, widthMm: 100 }, tests, placed)).toMatchObject({ lengthMm: 160 })
    expect(boardOutline({ lengthMm: 160 }, tests, placed)).toEqual({
      lengthMm: 120,
      widthMm: 80,
      from: 'cleanliness test',
    })
    expect(boardOutline({}, [], placed)).toEqual({ lengthMm: 50, widthMm: 35, from: 'defects placed' })
    expect(boardOutline({}, [], [inspection('A-1', 9)])).toBeUndefined()
  })
})
