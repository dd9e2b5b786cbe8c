import { expect, test } from 'vitest'
import { boardOf } from '@/shared/board/board'
import { layersFrom, readBoardFile, type ReadFile } from '@/shared/board/read-files'
import { at, drillMm, gerber } from './small-board'

/** Two lands of 1.6 mm with holes of 0.9 mm, 2.54 mm apart, a conductor to one of them, a via under the mask. */
const TOP = gerber(
  '%TF.FileFunction,Copper,L1,Top*%',
  '%ADD10C,1.6*%',
  '%ADD11C,0.3*%',
  '%ADD12C,0.7*%',
  'D10*',
  `${at(10, 10)}D03*`,
  `${at(12.54, 10)}D03*`,
  'D11*',
  `${at(10, 10)}D02*`,
  `${at(10, 20)}D01*`,
  'D12*',
  `${at(10, 20)}D03*`,
)
const BOTTOM = gerber(
  '%TF.FileFunction,Copper,L2,Bot*%',
  '%ADD10R,1.5X1.5*%',
  '%ADD12C,0.7*%',
  'D10*',
  `${at(10, 10)}D03*`,
  `${at(12.59, 10)}D03*`,
  'D12*',
  `${at(10, 20)}D03*`,
)
const MASK = gerber(
  '%TF.FileFunction,Soldermask,Top*%',
  '%ADD10C,1.7*%',
  'D10*',
  `${at(10, 10)}D03*`,
  `${at(12.54, 10)}D03*`,
)
const OUTLINE = gerber(
  '%TF.FileFunction,Profile,NP*%',
  '%ADD10C,0.1*%',
  'D10*',
  `${at(0, 0)}D02*`,
  `${at(40, 0)}D01*`,
  `${at(40, 30)}D01*`,
  `${at(0, 30)}D01*`,
  `${at(0, 0)}D01*`,
)
const DRILL = drillMm({ T1: 0.9, T2: 0.4 }, 'T1', 'X10.0Y10.0', 'X12.54Y10.0', 'T2', 'X10.0Y20.0')

const files = (texts: Record<string, string>): ReadFile[] =>
  Object.entries(texts).map(([name, text]) => readBoardFile({ name, text }))
const roleOf = (file: ReadFile) => ('proposed' in file ? file.proposed.role : ({ kind: 'other' } as const))
const boardFrom = (read: readonly ReadFile[], roles: typeof roleOf) => boardOf(layersFrom(read, roles))
const SET = { 'a.gbr': TOP, 'b.gbr': BOTTOM, 'm.gbr': MASK, 'o.gbr': OUTLINE, 'board-PTH.drl': DRILL }
const board = boardFrom(files(SET), roleOf)

test('takes each file for what it says it is, or is named', () => {
  expect(
    files(SET).map((file) => ('proposed' in file ? [file.proposed.role.kind, file.proposed.by] : [])),
  ).toEqual([
    ['copper', 'attribute'],
    ['copper', 'attribute'],
    ['mask', 'attribute'],
    ['outline', 'attribute'],
    ['drill', 'name'],
  ])
})

test('finds the rings of every hole on both sides', () => {
  // Top: (1.6 − 0.9)/2. Bottom: a square of 1.5, its second land 0.05 mm off the hole.
  const rings = board.holes.slice(0, 2).map(({ top, bottom }) => [top!.ringMm, bottom!.ringMm])
  expect(rings.flat().map((mm) => Math.round(mm * 1e4) / 1e4)).toEqual([0.35, 0.3, 0.35, 0.25])
})

test('tells vias from holes for leads by the mask', () => {
  expect(board.holes.map(({ kind, kindBy }) => [kind, kindBy])).toEqual([
    ['component', 'mask'],
    ['component', 'mask'],
    ['via', 'mask'],
  ])
})

test('joins copper through conductors and plated holes, and finds the least gap of what is not joined', () => {
  expect(board.pieces).toBe(2)
  // Bottom: lands 2.59 mm apart, each 0.75 mm wide to its middle.
  expect(board.gaps).toEqual([])
  expect(
    boardFrom(
      files({
        ...SET,
        'a.gbr': TOP.replace('D11*', '%ADD13C,0.3*%\nD13*').replace(
          at(10, 20) + 'D01*',
          at(10, 20) + 'D01*\n' + at(11.25, 12) + 'D02*\n' + at(11.25, 8) + 'D01*',
        ),
      }),
      roleOf,
    ).gaps.map(({ gapMm }) => Math.round(gapMm * 1e4) / 1e4),
  ).toEqual([0.3, 0.34])
})

test('chains the outline whatever the order of its lines', () => {
  expect(board.outline).toMatchObject({ closed: true, box: { minX: 0, minY: 0, maxX: 40, maxY: 30 } })
  const open = OUTLINE.replace(`${at(0, 0)}D01*`, '')
  expect(boardFrom(files({ ...SET, 'o.gbr': open }), roleOf).outline?.closed).toBe(false)
})

test('takes clear things out of the copper before them, and only of that', () => {
  const clear = gerber(
    '%TF.FileFunction,Copper,L1,Top*%',
    '%ADD10C,3*%',
    '%ADD11C,2.9*%',
    '%ADD12C,1.6*%',
    'D10*',
    `${at(10, 10)}D03*`,
    '%LPC*%',
    'D11*',
    `${at(10, 10)}D03*`,
    '%LPD*%',
    'D12*',
    `${at(10, 10)}D03*`,
  )
  const { holes } = boardFrom(
    files({ 'a.gbr': clear, 'x-PTH.drl': drillMm({ T1: 0.9 }, 'T1', 'X10.0Y10.0') }),
    roleOf,
  )
  expect(holes[0]!.top!.ringMm).toBeCloseTo(0.35, 6)
})
