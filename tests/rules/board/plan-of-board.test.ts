import { describe, expect, test } from 'vitest'
import { jointsFound, jointTouched, planOfBoard, type PlanJoint } from '@/shared/board/plan-of-board'
import { boardFrom } from './drawn-board'
import { JUDGED_BOARD } from './judged-board'

// The board is 40 by 30 mm; X1 pin 1 lies at (10, 10), X2 pin 2 at (20, 20).
const board = boardFrom(JUDGED_BOARD)
const at = (plan: ReturnType<typeof planOfBoard>, name: string) =>
  plan!.joints.find((joint) => joint.name === name)

describe('the plan of a board', () => {
  test('is its soldered side: what lies left in the files lies right, 40 − 10 = 30', () => {
    const plan = planOfBoard(board, undefined)
    expect(plan).toMatchObject({ lengthMm: 40, widthMm: 30 })
    expect(at(plan, 'X1-1')).toMatchObject({ xMm: 30, yMm: 10, landMm: 1.9 })
  })
  test('is turned by a quarter where the length specified is the other side; handedness stays that of the bottom', () => {
    const plan = planOfBoard(board, 30)
    expect(plan).toMatchObject({ lengthMm: 30, widthMm: 40 })
    expect(at(plan, 'X1-1')).toMatchObject({ xMm: 10, yMm: 10 })
    expect(at(plan, 'X2-2')).toMatchObject({ xMm: 20, yMm: 20 })
    const turnOf = (places: readonly { xMm: number; yMm: number }[]): number =>
      Math.sign(
        places.reduce((sum, { xMm, yMm }, index) => {
          const next = places[(index + 1) % places.length]!
          return sum + xMm * next.yMm - next.xMm * yMm
        }, 0),
      )
    // Whichever way round its files draw the outline, from below it goes round the other way.
    const drawn = turnOf(board.outline!.points.map(([xMm, yMm]) => ({ xMm, yMm })))
    expect(turnOf(plan!.outlineMm)).toBe(-drawn)
    expect(turnOf(planOfBoard(board, undefined)!.outlineMm)).toBe(-drawn)
  })
  test('is none without a closed outline', () => {
    expect(planOfBoard({ ...board, outline: undefined }, undefined)).toBeUndefined()
  })
})

const joint = (name: string, xMm: number, yMm: number): PlanJoint => ({ name, xMm, yMm, landMm: 2 })
const JOINTS = [joint('X1-10', 0, 0), joint('X1-2', 5, 0), joint('X10-2', 10, 0), joint('', 15, 0)]

describe('a joint', () => {
  test('is touched where it is the nearest within reach, or on its land', () => {
    expect(jointTouched(JOINTS, { xMm: 4.2, yMm: 0.3 }, 1)?.name).toBe('X1-2')
    expect(jointTouched(JOINTS, { xMm: 5.9, yMm: 0 }, 0.1)?.name).toBe('X1-2')
    expect(jointTouched(JOINTS, { xMm: 7.5, yMm: 4 }, 1)).toBeUndefined()
    expect(jointTouched([], { xMm: 0, yMm: 0 }, 1)).toBeUndefined()
  })
  test('is found by reference and pin, in the order of their numbers', () => {
    expect(jointsFound(JOINTS, '').map(({ name }) => name)).toEqual(['X1-2', 'X1-10', 'X10-2'])
    expect(jointsFound(JOINTS, 'x1-2').map(({ name }) => name)).toEqual(['X1-2', 'X10-2'])
    expect(jointsFound(JOINTS, 'x10 2').map(({ name }) => name)).toEqual(['X10-2'])
  })
})
