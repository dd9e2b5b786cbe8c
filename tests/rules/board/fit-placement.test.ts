import { describe, expect, test } from 'vitest'
import { layersFrom, readBoardFile } from '@/shared/board/read-files'
import { boardOf, type Board } from '@/shared/board/board'
import type { PlacementRole } from '@/shared/board/layer-role'
import { placementDifferences, type ListedNames } from '@/shared/board/placement/placement-check'
import { proposedPartsList } from '@/shared/board/proposed/proposed-parts-list'
import type { ListedRow } from '@/shared/plan/parameters/parts-list'
import { filesOf, type DrawnBoard } from './drawn-board'
import { CENTRES, PLACED_BOARD, placementText } from './placed-board'

interface Said extends Partial<Omit<PlacementRole, 'kind'>> {
  readonly drawn?: DrawnBoard
  readonly list?: string
}

/** The board with placement files beside it, as a person says what they are. */
function boardWith(text: string, { drawn = PLACED_BOARD, list, ...said }: Said = {}): Board {
  const files = [
    ...filesOf(drawn),
    readBoardFile({ name: 'centres.csv', text }),
    ...(list === undefined ? [] : [readBoardFile({ name: 'parts.csv', text: list })]),
  ]
  return boardOf(
    layersFrom(files, (file) => {
      if (!('proposed' in file)) return { kind: 'other' }
      return file.format === 'placement'
        ? { kind: 'placement', side: undefined, unit: undefined, moved: false, ...said }
        : file.proposed.role
    }),
  )
}
const fitOf = (board: Board) => board.placement!.files[0]!
const NAMES = Object.keys(CENTRES)

describe('a placement that lies on the board', () => {
  test('is held against the pins, and told the unit of by them', () => {
    for (const unit of ['mm', 'mil', 'inch'] as const) {
      const board = boardWith(placementText(CENTRES, { unit }))
      expect(fitOf(board)).toEqual({
        name: 'centres.csv',
        components: 6,
        unit,
        unitBy: 'fit',
        against: 'pins',
        compared: 6,
        met: 6,
        liesOn: true,
        move: undefined,
      })
      expect(board.placement!.placed.map(({ reference }) => reference)).toEqual(NAMES)
      for (const { reference, at, side, awayMm } of board.placement!.placed) {
        expect(at[0]).toBeCloseTo(CENTRES[reference]!.at[0], 4)
        expect(at[1]).toBeCloseTo(CENTRES[reference]!.at[1], 4)
        expect(side).toBe(CENTRES[reference]!.side)
        expect(awayMm).toBeCloseTo(0, 4)
      }
    }
  })
  test('in the unit that the file says, or a person, whatever else would fit', () => {
    const stated = boardWith(placementText(CENTRES, { heading: 'Ref,X (mm),Y (mm),Rot,Side' }))
    expect(fitOf(stated)).toMatchObject({ unit: 'mm', unitBy: 'file', liesOn: true })
    expect(fitOf(boardWith(placementText(), { unit: 'mm' }))).toMatchObject({
      unitBy: 'person',
      liesOn: true,
    })
    expect(fitOf(boardWith(placementText(), { unit: 'inch' }))).toMatchObject({
      unitBy: 'person',
      liesOn: false,
      met: 0,
    })
  })
  test('takes the side that a person says where the file says none', () => {
    const text = 'Ref,X (mm),Y (mm)\nC1,20,9.5\nC2,26,9.5'
    expect(boardWith(text).placement!.placed.map(({ side }) => side)).toEqual([undefined, undefined])
    expect(boardWith(text, { side: 'bottom' }).placement!.placed.map(({ side }) => side)).toEqual([
      'bottom',
      'bottom',
    ])
  })
})

describe('a placement that does not', () => {
  const elsewhere = placementText(CENTRES, {
    place: ([x, y]) => [x + 100, y - 20],
    heading: 'Ref,X (mm),Y (mm),Rot,Side',
  })
  test('is told by how far off it lies, and nothing of it is used', () => {
    const board = boardWith(elsewhere)
    expect(fitOf(board)).toMatchObject({
      liesOn: false,
      met: 0,
      compared: 6,
      move: { bottomMirrored: false, top: [-100, 20], bottom: [-100, 20] },
    })
    expect(board.placement!.placed).toEqual([])
  })
  test('is moved by that once a person says so', () => {
    const { placed } = boardWith(elsewhere, { moved: true }).placement!
    expect(placed).toHaveLength(6)
    for (const { reference, at } of placed) {
      expect(at[0]).toBeCloseTo(CENTRES[reference]!.at[0], 4)
      expect(at[1]).toBeCloseTo(CENTRES[reference]!.at[1], 4)
    }
  })
  test('since its bottom is seen from below: about its origin, or from the other edge of the board', () => {
    const below = (width: number) =>
      placementText(CENTRES, { place: ([x, y], side) => (side === 'bottom' ? [width - x, y] : [x, y]) })
    expect(fitOf(boardWith(below(0)))).toMatchObject({
      unit: 'mm',
      liesOn: false,
      met: 3,
      move: { bottomMirrored: true, top: [0, 0], bottom: [0, 0] },
    })
    const fromEdge = boardWith(
      placementText(
        { ...CENTRES, R3: { at: [9, 16], side: 'top' } },
        { place: ([x, y], side) => (side === 'bottom' ? [40 - x, y] : [x, y]) },
      ),
      { moved: true },
    )
    expect(fitOf(fromEdge)).toMatchObject({
      liesOn: true,
      move: { bottomMirrored: true, top: [0, 0], bottom: [40, 0] },
    })
    expect(fromEdge.placement!.placed.find(({ reference }) => reference === 'C3')!.at).toEqual([
      expect.closeTo(32, 4),
      expect.closeTo(9.5, 4),
    ])
  })
  test('of two components tells no move, for any two could be brought anywhere', () => {
    const { R1, C1 } = CENTRES
    const two = placementText({ R1: R1!, C1: C1! }, { place: ([x, y]) => [x + 100, y] })
    expect(fitOf(boardWith(two, { unit: 'mm', moved: true }))).toMatchObject({
      liesOn: false,
      move: undefined,
    })
  })
  test('of components that the board has not is held against nothing', () => {
    const board = boardWith('Ref,X (mm),Y (mm)\nQ1,10,10\nQ2,20,10')
    expect(fitOf(board)).toMatchObject({ against: 'nothing', liesOn: false, compared: 0 })
  })
})

describe('a board of which no file names a pin', () => {
  const nameless: DrawnBoard = {
    ...PLACED_BOARD,
    lands: PLACED_BOARD.lands.map(({ pin: _, ...land }) => land),
  }
  test('holds centres against its outline', () => {
    const heading = 'Ref,X (mm),Y (mm),Rot,Side'
    const board = boardWith(placementText(CENTRES, { heading }), { drawn: nameless })
    expect(fitOf(board)).toMatchObject({ against: 'outline', liesOn: true, compared: 6, met: 6 })
    expect(board.placement!.placed[0]!.awayMm).toBeUndefined()
    const outside = placementText(CENTRES, { heading, place: ([x, y]) => [x + 20, y] })
    expect(fitOf(boardWith(outside, { drawn: nameless }))).toMatchObject({ liesOn: false, met: 3 })
  })
  test('tells no unit where it could be two', () => {
    const board = boardWith(placementText(), { drawn: nameless })
    expect(fitOf(board)).toMatchObject({
      against: 'outline',
      liesOn: false,
      unit: undefined,
      unitBy: undefined,
    })
  })
})

describe('placement, parts list and pins beside each other', () => {
  const rows = (...list: readonly (readonly string[])[]): ListedNames[] => list.map((names) => ({ names }))
  const differencesOf = (board: Board, list?: readonly ListedNames[]) =>
    Object.fromEntries(
      placementDifferences(board.placement!.placed, { ...board, list }).map(({ kind, components }) => [
        kind,
        components.map(({ reference }) => reference),
      ]),
    )
  const LIST = rows(['R1', 'R2'], ['C1', 'C2', 'C3'], ['X1'])
  test('agree, but for the hole that only holds the board; a land for a probe is none', () => {
    expect(differencesOf(boardWith(placementText()), LIST)).toEqual({ 'one joint, not placed': ['H1'] })
  })
  test('differ in every way there is, the worst first', () => {
    const { R1, R2, C1, C2 } = CENTRES
    const text =
      placementText({
        R1: { ...R1!, side: 'bottom' },
        R2: { ...R2!, at: [9, 18.5] },
        C1: C1!,
        C2: { ...C2!, side: 'top' },
        FID1: { at: [3, 3], side: 'top' },
      }) + 'C1,20,9.5,0,bottom\n'
    // One of six centres is away: the others tell that the file lies on the board.
    const board = boardWith(text, { unit: 'mm' })
    expect(fitOf(board)).toMatchObject({ compared: 5, met: 4, liesOn: true })
    const list: ListedNames[] = [{ names: ['R1', 'R2'], side: 'top' }, ...rows(['C1'], ['Q7'])]
    expect(Object.entries(differencesOf(board, list))).toEqual([
      ['placed twice', ['C1']],
      ['listed, not placed', ['Q7']],
      ['on the board, not placed', ['C3', 'X1']],
      ['placed, not listed', ['C2', 'FID1']],
      ['on the other side', ['C2', 'R1']],
      ['on another side than listed', ['R1']],
      ['away from its pins', ['R2']],
      ['one row on both sides', ['R1, R2']],
      ['placed, not on the board', ['FID1']],
      ['one joint, not placed', ['H1']],
    ])
    const away = placementDifferences(board.placement!.placed, { ...board, list }).find(
      ({ kind }) => kind === 'away from its pins',
    )
    expect(away!.components[0]!.awayMm).toBeCloseTo(2.5, 6)
  })
  test('without a parts list nothing is said to be missing there', () => {
    expect(Object.keys(differencesOf(boardWith(placementText())))).toEqual(['one joint, not placed'])
  })
})

describe('the parts list from the files', () => {
  const row = (references: string, part: string, more: Partial<ListedRow> = {}): ListedRow => ({
    references,
    part,
    quantity: 2,
    soldered: undefined,
    side: undefined,
    ...more,
  })
  test('gives each row that says no side the one its components are placed on', () => {
    const before = [
      row('R1, R2', 'A'),
      row('C1–C3', 'B', { side: 'top' }),
      row('R1, C1', 'C'),
      row('', 'SOLDER'),
    ]
    expect(proposedPartsList(boardWith(placementText()), before)).toEqual([
      { ...before[0], side: 'top' },
      ...before.slice(1),
    ])
  })
  test('takes rows from the list among them, with what stands for their parts, and leaves what has no reference', () => {
    const list = 'Ref,Part number,Qty\n"C3,C1,C2",b,3\n"R1,R2",A2,\nX1,,1'
    const before = [row('C1', 'B', { soldered: 'machine' }), row('', 'SOLDER')]
    expect(proposedPartsList(boardWith(placementText(), { list }), before)).toEqual([
      { references: 'C1–C3', part: 'B', quantity: 3, soldered: 'machine', side: 'bottom' },
      { references: 'R1, R2', part: 'A2', quantity: 2, side: 'top' },
      { references: 'X1', quantity: 1, side: 'top' },
      before[1],
    ])
  })
  test('is none where no file says anything of it', () => {
    expect(proposedPartsList(boardWith('none'), [row('R1', 'A')])).toBeUndefined()
  })
})
