import { describe, expect, test } from 'vitest'
import { partsOnBoard } from '@/shared/works/parts-on-board'
import {
  leadFinishesFromParts,
  leadHolesFromParts,
  lotsFromParts,
  surfaceJointsFromParts,
} from '@/shared/works/proposed-from-parts'
import { leadFinish } from '../specification/finish-rows'
import { leadHole } from '../specification/lead-hole-rows'
import { listedPart, listRow } from '../specification/part-rows'

/* Common practice, no published source: what a table says of a part is copied from the part, never guessed. */

const resistor = listedPart('R', {
  leads: 2,
  leadShape: 'round',
  leadMm: 0.6,
  base: 'copper',
  barrier: 'none',
  coating: 'tin-matte',
  coatingUm: 8,
})
const wide = listedPart('U16', { leads: 16, leadShape: 'rectangular', leadMm: 0.48, leadThicknessMm: 0.28 })
const narrow = listedPart('U14', { leads: 14, leadShape: 'rectangular', leadMm: 0.5, leadThicknessMm: 0.28 })
const chip = listedPart('CHIP', { kind: 'surface-mount', leads: 2 })
const board = partsOnBoard(
  [
    listRow('R1-R5', 'R', { quantity: 5 }),
    listRow('U1', 'U14'),
    listRow('U2', 'U16'),
    listRow('C1-C3', 'CHIP', { quantity: 3 }),
    listRow(undefined, 'S', { soldered: undefined }),
  ],
  [resistor, wide, narrow, chip, listedPart('S', { kind: 'solder' })],
)

describe('holes and leads', () => {
  test('each part with leads is a row; hole and land are left to be filled in', () => {
    const [first, ...others] = leadHolesFromParts(board, [])
    expect(first).toEqual({
      component: 'R1-R5',
      joints: 10,
      leadsEach: 2,
      soldered: 'machine',
      leadShape: 'round',
      leadMm: 0.6,
    })
    expect(others.map(({ component, joints }) => [component, joints])).toEqual([
      ['U1', 14],
      ['U2', 16],
    ])
  })
  test('a row that stands keeps its hole and takes lead and joints of its part', () => {
    const standing = leadHole({ component: 'R1–R5', joints: 8, leadMm: 0.65, holeMm: 1.05 })
    const [row] = leadHolesFromParts(board, [standing])
    expect(row).toEqual({ ...standing, joints: 10, leadMm: 0.6 })
  })
  test('of two parts in one row only what both say alike is taken', () => {
    const standing = leadHole({ component: 'U1, U2', joints: 28, leadMm: 0.4, leadThicknessMm: 0.2 })
    const rows = leadHolesFromParts(board, [standing])
    expect(rows[0]).toMatchObject({ joints: 30, leadMm: 0.4, leadThicknessMm: 0.28 })
    expect(rows).toHaveLength(2)
  })
  test('a component in two rows keeps the joints of each, and what the list does not know stays', () => {
    const standing = [
      leadHole({ component: 'R1-R5', joints: 6 }),
      leadHole({ component: 'R1-R5', joints: 4 }),
      leadHole({ component: 'X9' }),
    ]
    const rows = leadHolesFromParts(board, standing)
    expect(rows.slice(0, 2).map(({ joints }) => joints)).toEqual([6, 4])
    expect(rows[2]).toBe(standing[2])
  })
})

test('finishes are those of the parts, and what is typed beside them stays', () => {
  const rows = leadFinishesFromParts(board, [
    leadFinish({ component: 'R1-R5', coating: 'gold', goldRemoved: true }),
  ])
  expect(rows[0]).toMatchObject({ coating: 'tin-matte', coatingUm: 8, goldRemoved: true })
  expect(rows.map(({ component }) => component)).toEqual(['R1-R5', 'U1', 'U2'])
})

describe('joints without a hole', () => {
  test('are pieces times terminations', () => {
    expect(surfaceJointsFromParts(board)).toBe(6)
  })
  test('are not known while a soldered part is not described', () => {
    expect(surfaceJointsFromParts(partsOnBoard([listRow('C1', 'CHIP')], []))).toBeUndefined()
  })
})

test('parts to be evaluated are added but for those that a row names by number or by reference', () => {
  const before = [
    { part: 'resistors R1–R5', kind: 'component', method: 'dip-and-look' },
    { part: 'U16', kind: 'component', method: 'dip-and-look' },
  ]
  expect(lotsFromParts(board, before)).toEqual([
    ...before,
    { part: 'U14 U1', kind: 'component' },
    { part: 'CHIP C1-C3', kind: 'component' },
    { part: 'S', kind: 'consumable' },
  ])
})
