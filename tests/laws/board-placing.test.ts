import fc from 'fast-check'
import { expect, test } from 'vitest'
import { boardFindings } from '@/shared/board/judged/board-findings'
import { isPlaced } from '@/shared/board/judged/placed-part'
import { gridShareMin } from '@/shared/plan/limits/lead-holes'
import { boardLength, boardWidth } from '@/shared/plan/parameters/assessment-inspection'
import { copperFoil } from '@/shared/plan/parameters/laminate'
import { factsWith, requirement, set } from '@/tests/rules/facts-builder'
import {
  AS_DRAWN,
  boardFrom,
  type DrawnBoard,
  type Place,
  type Writing,
} from '@/tests/rules/board/drawn-board'
import { SPECIFIED } from '@/tests/rules/board/judged-board'

/* Where a board lies, how it is turned, from which side it is seen and in which unit it is written is no matter of it. */

/** Hundredths of a millimetre, so that no rounding to a micrometre lies on its border. */
const hundredths = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 100)
const on = <T extends string>(...layers: T[]) => fc.constantFrom(...layers)
/** Holes stand on a grid of their own size, so that they never meet; not all of them lie on one that boards are laid out on. */
const PITCH_MM = 3.03
const cell = fc.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 4 }))

const land = fc.record({
  cell,
  off: fc.tuple(hundredths(-15, 15), hundredths(-15, 15)),
  size: fc.oneof(
    hundredths(60, 290),
    hundredths(275, 290),
    fc.tuple(hundredths(60, 290), hundredths(60, 290)),
  ),
  layers: fc.constantFrom(['top', 'bottom'] as const, ['top'] as const, ['bottom', 'inner 2'] as const),
  mm: fc.constantFrom(0.3, 1.15, 1.15, 3),
  plated: fc.constantFrom(true, true, false),
  bare: fc.constantFrom(true, true, false),
})
const line = fc.record({
  on: on('top', 'bottom', 'inner 2'),
  from: fc.tuple(hundredths(20, 2900), hundredths(20, 1900)),
  to: fc.tuple(hundredths(20, 2900), hundredths(20, 1900)),
  width: hundredths(10, 60),
})
/** A plane on one side, with clearances round some lands, so that conductors that cross them become webs. */
const plane = fc.record({
  on: on('top', 'bottom'),
  right: hundredths(2500, 3000),
  clear: hundredths(320, 400),
})
const anyBoard: fc.Arbitrary<DrawnBoard> = fc
  .record({
    lands: fc.uniqueArray(land, { maxLength: 16, selector: (each) => each.cell.join() }),
    lines: fc.array(line, { maxLength: 5 }),
    plane: fc.option(plane, { nil: undefined }),
  })
  .map(({ lands, lines, plane: drawn }) => ({
    ...(drawn && {
      planes: [
        {
          on: drawn.on,
          points: [
            [1, 1],
            [drawn.right, 1],
            [drawn.right, 20],
            [1, 20],
          ] as const,
        },
      ],
      clears: lands
        .filter((_, at) => at % 2 === 0)
        .map(({ cell: [column, row] }) => ({
          on: drawn.on,
          at: [PITCH_MM * column, PITCH_MM * row] as const,
          size: drawn.clear,
        })),
    }),
    lands: lands.map(({ cell: [column, row], off, size, layers, bare }) => ({
      on: layers,
      at: [PITCH_MM * column + off[0], PITCH_MM * row + off[1]],
      size,
      bare,
    })),
    lines,
    holes: lands.map(({ cell: [column, row], mm, plated }) => ({
      at: [PITCH_MM * column, PITCH_MM * row],
      mm,
      plated,
    })),
    outline: [
      [0, 0],
      [31, 0],
      [31, 21],
      [0, 21],
    ],
    cutouts: [
      [
        [29, 1],
        [30, 1],
        [30, 2],
        [29, 2],
      ],
    ],
  }))

const FACTS = factsWith({
  values: [...SPECIFIED, set(copperFoil, '35'), set(boardLength, 31), set(boardWidth, 21)],
  requirements: [requirement(gridShareMin, 50, { relaxes: true })],
})

/** All that is judged of a board: for each matter its verdict, and verdict, layer and measure of every part. */
function judgedOf(board: DrawnBoard, writing: Writing) {
  return boardFindings(boardFrom(board, writing), FACTS).map(({ key, finding }) => {
    const parts = (finding.parts ?? []).map((part) => ({
      said: `${part.verdict} ${isPlaced(part) ? part.layer : ''}`,
      found: part.margin?.found ?? 0,
      readTo:
        key === 'relief-on-board' ? READ_TO_OBLIQUELY[part.margin?.unit === '%' ? '%' : 'mm'] : READ_TO_MM,
    }))
    parts.sort((one, other) => one.said.localeCompare(other.said) || one.found - other.found)
    return {
      key,
      verdict: finding.verdict,
      said: parts.map(({ said }) => said),
      found: parts.map(({ found }) => found),
      readTo: parts.map(({ readTo }) => readTo),
    }
  })
}

/** A micrometre is what files are read to. */
const READ_TO_MM = 0.0011
/**
 * Circles of a plane are chords up to a micrometre inside; where one is cut obliquely, as by the way round the land of a
 * neighbour, that is a hundredth of a millimetre along it: of the least land a percent.
 */
const READ_TO_OBLIQUELY = { mm: 0.01, '%': 1.4 }

function expectSame(board: DrawnBoard, writing: Writing): void {
  const [one, other] = [judgedOf(board, AS_DRAWN), judgedOf(board, writing)]
  const apart = (all: typeof one) => all.map(({ found: _, readTo: _to, ...rest }) => rest)
  expect(apart(other)).toEqual(apart(one))
  other.forEach(({ found, readTo, key }, at) =>
    found.forEach((value, part) => {
      // The ratio of a size has no micrometres; it is as exact as the size.
      expect(Math.abs(value - one[at]!.found[part]!), key).toBeLessThan(readTo[part]!)
    }),
  )
}

const WRITINGS: Readonly<Record<string, (moved: Place) => Writing>> = {
  moved: ([dx, dy]) => ({ ...AS_DRAWN, place: ([x, y]) => [x + dx, y + dy] }),
  'turned by a quarter': () => ({ ...AS_DRAWN, place: ([x, y]) => [-y, x], turned: true }),
  'turned by a half': () => ({ ...AS_DRAWN, place: ([x, y]) => [-x, -y] }),
  mirrored: () => ({ ...AS_DRAWN, place: ([x, y]) => [-x, y] }),
  'written in inches': () => ({ ...AS_DRAWN, unit: 'inch' }),
  'moved, turned, mirrored and written in inches': ([dx, dy]) => ({
    unit: 'inch',
    place: ([x, y]) => [y + dx, x + dy],
    turned: true,
  }),
}

test.each(Object.entries(WRITINGS))('a board that is %s is judged alike', (_, writingOf) => {
  const move = fc.tuple(hundredths(-20_000, 20_000), hundredths(-20_000, 20_000))
  fc.assert(
    fc.property(anyBoard, move, (board, moved) => expectSame(board, writingOf(moved))),
    { numRuns: 60 },
  )
})

test('the boards tried hold what is to be judged', () => {
  const verdicts = new Map<string, Set<string>>()
  for (const board of fc.sample(anyBoard, { numRuns: 60, seed: 1 }))
    for (const { key, verdict } of judgedOf(board, AS_DRAWN))
      verdicts.set(key, (verdicts.get(key) ?? new Set()).add(verdict))
  for (const key of [
    'rings-on-board',
    'gaps-on-board',
    'edges-on-board',
    'walls-on-board',
    'bare-gaps-on-board',
    'bridging-on-board',
    'mask-webs-on-board',
    'relief-on-board',
    'grid-on-board',
  ])
    expect([...verdicts.get(key)!].includes('fails'), key).toBe(true)
})
