import { expect, test } from 'vitest'
import type { BoardJoint } from '@/shared/board/board-joints'
import { jointCounts, jointsByComponent, referenceDifferences } from '@/shared/board/joints-by-component'
import type { ListedRow } from '@/shared/plan/parameters/parts-list'

const joint = (component: string | undefined, pin: string, on: BoardJoint['on']): BoardJoint => ({
  component,
  pin,
  at: [0, 0],
  on,
  landMm: 1,
})
const listed = (references: string, more: Partial<ListedRow> = {}): ListedRow => ({
  references,
  part: 'P',
  quantity: 1,
  soldered: undefined,
  side: undefined,
  ...more,
})

// Two resistors on the surface, a connector of three pins by hand, a bottom part of one land, a nameless hole.
const JOINTS = [
  joint('R1', '1', 'top'),
  joint('R1', '2', 'top'),
  joint('R2', '1', 'top'),
  joint('R2', '2', 'top'),
  ...['1', '2', '3'].map((pin) => joint('X10', pin, 'hole')),
  joint('C1', '1', 'bottom'),
  joint(undefined, '', 'hole'),
]
const LIST = [
  listed('R1–R3', { soldered: 'machine' }),
  listed('X10', { soldered: 'hand', side: 'top' }),
  listed('X2'),
]

test('joints are counted by component, with side and soldering as far as they are known', () => {
  expect(jointsByComponent(JOINTS, LIST)).toEqual([
    { component: 'C1', inHoles: 0, onTop: 0, onBottom: 1, side: 'bottom', soldered: undefined },
    { component: 'R1', inHoles: 0, onTop: 2, onBottom: 0, side: 'top', soldered: 'machine' },
    { component: 'R2', inHoles: 0, onTop: 2, onBottom: 0, side: 'top', soldered: 'machine' },
    { component: 'X10', inHoles: 3, onTop: 0, onBottom: 0, side: 'top', soldered: 'hand' },
  ])
})

test('a component sits where it is placed, unless the parts list says otherwise; its lands tell last', () => {
  const placed = [
    { reference: 'x10', at: [4, 5], side: 'bottom', awayMm: 0 },
    { reference: 'C1', at: [1, 2], side: 'top', awayMm: 0 },
  ] as const
  const [c1, r1, , x10] = jointsByComponent(JOINTS, LIST, placed)
  expect(c1).toMatchObject({ component: 'C1', side: 'top', at: [1, 2] })
  expect(r1).toMatchObject({ component: 'R1', side: 'top', at: undefined })
  expect(x10).toMatchObject({ component: 'X10', side: 'top', at: [4, 5] })
  expect(jointsByComponent(JOINTS, [], placed)[3]).toMatchObject({ component: 'X10', side: 'bottom' })
})

test('and added up by both', () => {
  const counts = jointCounts(jointsByComponent(JOINTS, LIST))
  expect(counts).toContainEqual({ soldered: 'machine', side: 'top', components: 2, inHoles: 0, onLands: 4 })
  expect(counts).toContainEqual({ soldered: 'hand', side: 'top', components: 1, inHoles: 3, onLands: 0 })
  const sum = counts.reduce((all, { inHoles, onLands }) => all + inHoles + onLands, 0)
  expect(sum).toBe(JOINTS.length - 1)
})

test('references that only the list or only the files have are told, in the order of their numbers', () => {
  expect(referenceDifferences(JOINTS, LIST)).toEqual({
    onlyListed: ['R3', 'X2'],
    onlyInFiles: ['C1'],
    nameless: 1,
  })
  // Capitals do not tell names apart.
  expect(referenceDifferences([joint('r1', '1', 'top')], [listed('R1')])).toMatchObject({
    onlyListed: [],
    onlyInFiles: [],
  })
  expect(referenceDifferences([], [])).toEqual({ onlyListed: [], onlyInFiles: [], nameless: 0 })
})
