import { describe, expect, test } from 'vitest'
import { proposedConductors } from '@/shared/board/proposed/proposed-conductors'
import {
  proposedCopperToEdge,
  proposedSize,
  proposedSurfaceJoints,
} from '@/shared/board/proposed/proposed-sizes'
import { proposedSpacings } from '@/shared/board/proposed/proposed-spacings'
import type { ConductorRow } from '@/shared/plan/parameters/conductors'
import type { NetClass } from '@/shared/plan/parameters/net-classes'
import { spacing } from '../specification/spacing-rows'
import { boardFrom } from './drawn-board'
import { JUDGED_BOARD } from './judged-board'

const board = boardFrom(JUDGED_BOARD)
const row = (nets: string, more: Partial<NetClass>): NetClass => ({
  nets,
  voltageV: undefined,
  alternates: undefined,
  currentA: undefined,
  dropMostMv: undefined,
  ...more,
})

describe('spacings from the files', () => {
  // Lands of 1.9 mm, 2.3 mm apart: 0.4 mm on both sides.
  test('give the least gap to the row that names both nets, and leave the others', () => {
    const before = [spacing({ between: 'VIN to GND', gapMm: 1 }), spacing({ gapMm: 2 })]
    expect(proposedSpacings(board.gaps, before, [])).toEqual([{ ...before[0], gapMm: 0.4 }, before[1]])
  })
  test('add the closest pair of every voltage that stands in no row, what the files do not know left blank', () => {
    const classes = [row('VIN', { voltageV: 48 }), row('GND', { voltageV: 0 })]
    expect(proposedSpacings(board.gaps, [], classes)).toEqual([
      { between: expect.stringMatching(/^(VIN to GND|GND to VIN)$/), peakV: 48, gapMm: 0.4 },
    ])
    expect(proposedSpacings(board.gaps, [spacing({ peakV: 48 })], classes)).toHaveLength(1)
  })
})

describe('conductors from the files', () => {
  const line = { net: 'VIN', layer: 'external', copperUm: 35, currentA: 2, lengthMm: 10 } as const
  const drawn = boardFrom({
    ...JUDGED_BOARD,
    lines: [{ on: 'top', from: [10, 10], to: [10, 25], width: 0.6 }],
  })
  test('give width to the rows that name their net, and keep what was typed', () => {
    const before: ConductorRow = { ...line, widthMm: 1, dropMostMv: 20 }
    expect(proposedConductors(drawn, [before], [])).toEqual([{ ...before, widthMm: 0.6 }])
  })
  test('add a row for a net that carries current, without the copper that the files do not know', () => {
    expect(proposedConductors(drawn, [], [row('V*', { currentA: 3 })])).toEqual([
      { net: 'VIN', layer: 'external', widthMm: 0.6, currentA: 3 },
    ])
  })
  test('leave a row alone whose net the files do not have', () => {
    const other: ConductorRow = { ...line, net: 'VCC', widthMm: 1, dropMostMv: undefined }
    expect(proposedConductors(drawn, [other], [])).toEqual([other])
  })
})

describe('sizes from the files', () => {
  const unsaid = { lengthMm: undefined, widthMm: undefined }
  test('are those of the outline, as the length that stands lies', () => {
    expect(proposedSize(board, unsaid)).toEqual({ lengthMm: 40, widthMm: 30 })
    expect(proposedSize(board, { lengthMm: 31, widthMm: 41 })).toEqual({ lengthMm: 30, widthMm: 40 })
    expect(proposedSize({ outline: undefined }, unsaid)).toBeUndefined()
  })
  // The line at y = 0.6, 0.3 wide: 0.45 from the edge.
  test('copper to edge is the least distance, and none where copper lies beyond the edge', () => {
    expect(proposedCopperToEdge(board)).toBeCloseTo(0.45, 6)
    expect(proposedCopperToEdge({ edges: [] })).toBeUndefined()
  })
  test('joints without a hole are counted where pins are named, and not where none is', () => {
    const pad = (pin: string, x: number) => ({
      on: ['top' as const],
      at: [x, 25] as const,
      size: [1, 0.6] as const,
      pin: ['U1', pin] as const,
    })
    const mounted = boardFrom({ ...JUDGED_BOARD, lands: [...JUDGED_BOARD.lands, pad('1', 5), pad('2', 7)] })
    expect(proposedSurfaceJoints(mounted)).toBe(2)
    expect(proposedSurfaceJoints(board)).toBe(0)
    const nameless = boardFrom({
      ...JUDGED_BOARD,
      lands: JUDGED_BOARD.lands.map(({ pin: _, ...land }) => land),
    })
    expect(proposedSurfaceJoints(nameless)).toBeUndefined()
  })
})
