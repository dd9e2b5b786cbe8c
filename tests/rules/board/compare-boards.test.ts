import { describe, expect, test } from 'vitest'
import { compareBoards, laidOn, type BoardDifferences } from '@/shared/board/compared/compare-boards'
import { holesAlike, ringsAlike } from '@/shared/board/compared/alike'
import { turnedFindings } from '@/shared/board/compared/turned-findings'
import { boardFindings } from '@/shared/board/judged/board-findings'
import { factsWith } from '../facts-builder'
import { AS_DRAWN, boardFrom, type DrawnBoard, type Writing } from './drawn-board'
import { JUDGED_BOARD, SPECIFIED } from './judged-board'

/* What is other follows from what was changed in the drawing. */

const before = boardFrom(JUDGED_BOARD)
const compared = (changed: DrawnBoard, writing: Writing = AS_DRAWN): BoardDifferences => {
  const after = boardFrom(changed, writing)
  const { board, shift } = laidOn(before, after)
  return compareBoards(board, after, shift)
}
const turnedBy = (changed: DrawnBoard, writing: Writing = AS_DRAWN) => {
  const after = boardFrom(changed, writing)
  const facts = factsWith({ values: SPECIFIED })
  return turnedFindings(
    boardFindings(laidOn(before, after).board, facts),
    boardFindings(after, facts),
  ).filter((each) => each.before !== each.after || each.places.length > 0)
}
const holes = (
  change: (hole: DrawnBoard['holes'][number], at: number) => DrawnBoard['holes'],
): DrawnBoard => ({
  ...JUDGED_BOARD,
  holes: JUDGED_BOARD.holes.flatMap(change),
})
const lands = (
  change: (land: DrawnBoard['lands'][number], at: number) => DrawnBoard['lands'][number],
): DrawnBoard => ({
  ...JUDGED_BOARD,
  lands: JUDGED_BOARD.lands.map(change),
})
const NOTHING = { shift: undefined, outline: undefined, holes: [], rings: [], gaps: [] }

test('the same board is the same, in either unit', () => {
  expect(compared(JUDGED_BOARD)).toEqual(NOTHING)
  expect(compared(JUDGED_BOARD, { ...AS_DRAWN, unit: 'inch' })).toEqual(NOTHING)
  expect(turnedBy(JUDGED_BOARD, { ...AS_DRAWN, unit: 'inch' })).toEqual([])
})

test('a board that lies elsewhere is told by how much, and is else the same', () => {
  const found = compared(JUDGED_BOARD, { ...AS_DRAWN, place: ([x, y]) => [x + 100, y - 50] })
  expect(found).toEqual({ ...NOTHING, shift: [expect.closeTo(100, 6), expect.closeTo(-50, 6)] })
  expect(turnedBy(JUDGED_BOARD, { ...AS_DRAWN, place: ([x, y]) => [x + 100, y - 50] })).toEqual([])
})

describe('holes', () => {
  test('that are gone, added or of another size are told of', () => {
    const changed = holes((hole, at) =>
      at === 5
        ? []
        : at === 4
          ? [{ ...hole, mm: 0.35 }]
          : at === 0
            ? [hole, { at: [5, 25], mm: 2, plated: false }]
            : [hole],
    )
    expect(compared(changed).holes).toMatchObject([
      { kind: 'gone', at: [35, 5], hole: { diameterMm: 3 } },
      { kind: 'added', at: [5, 25], hole: { diameterMm: 2 } },
      { kind: 'resized', at: [30, 20], hole: { diameterMm: 0.35 }, before: { diameterMm: 0.3 } },
    ])
  })
  test('that moved with their pin are the same ones', () => {
    const moved = {
      ...lands((land) => (land.pin?.join() === 'X2,1' ? { ...land, at: [20, 5] } : land)),
      holes: JUDGED_BOARD.holes.map((hole, at) => (at === 2 ? { ...hole, at: [20, 5] as const } : hole)),
    }
    expect(compared(moved).holes).toMatchObject([
      { kind: 'moved', byMm: 5, at: [20, 5], before: { a: [20, 10] }, hole: { component: 'X2', pin: '1' } },
    ])
    expect(compared(moved).rings).toEqual([])
  })
  test('without a pin are the same ones where the nearest of their size is near', () => {
    const near = holes((hole, at) => [at === 5 ? { ...hole, at: [36, 5] as const } : hole])
    expect(compared(near).holes).toMatchObject([{ kind: 'moved', byMm: 1, at: [36, 5] }])
    const far = holes((hole, at) => [at === 5 ? { ...hole, at: [35, 25] as const } : hole])
    expect(compared(far).holes.map(({ kind }) => kind)).toEqual(['gone', 'added'])
  })
  test('that are plated no more are told of', () => {
    const changed = holes((hole, at) => [at === 5 ? { ...hole, plated: true } : hole])
    expect(compared(changed).holes).toMatchObject([
      { kind: 'plating', hole: { plated: true }, before: { plated: false } },
    ])
  })
})

test('rings and gaps that changed are told of with what they were', () => {
  // X2 pin 1: a land of 1.5 becomes 1.9; X1 pin 2: 1.9 becomes 1.7 on both sides.
  const changed = lands((land) =>
    land.pin?.join() === 'X2,1'
      ? { ...land, size: 1.9 }
      : land.pin?.join() === 'X1,2'
        ? { ...land, size: 1.7 }
        : land,
  )
  const { rings, gaps } = compared(changed)
  const rounded = (mm: number | undefined) => mm && Math.round(mm * 1000) / 1000
  expect(rings.map(({ layer, beforeMm, afterMm }) => [layer, rounded(beforeMm), rounded(afterMm)])).toEqual([
    ['top', 0.175, 0.375],
    ['bottom', 0.175, 0.375],
    ['top', 0.375, 0.275],
    ['bottom', 0.375, 0.275],
  ])
  expect(
    gaps.map(({ layer, nets, beforeMm, afterMm }) => [layer, ...nets, rounded(beforeMm), rounded(afterMm)]),
  ).toEqual([
    ['top', 'VIN', 'GND', 0.4, 0.5],
    ['bottom', 'VIN', 'GND', 0.4, 0.5],
  ])
})

test('a gap that opened beyond where gaps are looked for is told of', () => {
  const without = { ...JUDGED_BOARD, lines: JUDGED_BOARD.lines.slice(0, 4) }
  expect(compared(without).gaps).toMatchObject([
    { layer: 'top', beforeMm: expect.closeTo(0.2, 3), afterMm: undefined },
  ])
})

test('another outline is told of by its size', () => {
  const [a, b] = JUDGED_BOARD.outline
  expect(compared({ ...JUDGED_BOARD, outline: [a!, b!, [40, 35], [0, 35]] }).outline).toEqual({
    before: [40, 30],
    after: [40, 35],
  })
})

test('findings turn at the places that were mended or broken', () => {
  const mended = lands((land) => (land.pin?.join() === 'X2,1' ? { ...land, size: 1.9 } : land))
  expect(turnedBy(mended)).toMatchObject([
    {
      key: 'rings-on-board',
      before: 'fails',
      after: 'meets',
      places: [
        { subject: 'X2 pin 1, top', before: 'fails', after: 'meets' },
        { subject: 'X2 pin 1, bottom', before: 'fails', after: 'meets' },
      ],
    },
  ])
  const broken = {
    ...JUDGED_BOARD,
    lines: [
      ...JUDGED_BOARD.lines,
      { on: 'bottom' as const, from: [39.7, 20] as const, to: [39.7, 25] as const, width: 0.2 },
    ],
  }
  expect(turnedBy(broken)).toMatchObject([
    {
      key: 'edges-on-board',
      before: 'fails',
      after: 'fails',
      places: [{ before: undefined, after: 'fails' }],
    },
  ])
})

test('what changed alike is told of once, with how many', () => {
  const changed = holes((hole, at) => (at === 5 ? [] : [{ ...hole, mm: hole.mm === 1.15 ? 1.2 : hole.mm }]))
  const found = compared(changed)
  expect(holesAlike(found.holes).map((group) => [group[0].kind, group.length])).toEqual([
    ['gone', 1],
    ['resized', 4],
  ])
  // Every ring is 0.025 narrower: 0.375 outside on five lands, 0.225, 0.275 and 0.175 once or twice.
  expect(
    ringsAlike(found.rings).map((group) => [Math.round(group[0].beforeMm! * 1000), group.length]),
  ).toEqual([
    [175, 2],
    [225, 1],
    [275, 1],
    [375, 5],
  ])
})
