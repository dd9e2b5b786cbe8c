import fc from 'fast-check'
import { expect, test } from 'vitest'
import { placementDifferences } from '@/shared/board/placement/placement-check'
import { readBoardFile } from '@/shared/board/read-files'
import { AS_DRAWN, filesOf, readAs, type Writing } from '@/tests/rules/board/drawn-board'
import { CENTRES, PLACED_BOARD, placementText, type PlacedAt } from '@/tests/rules/board/placed-board'

/* Where a board and its placement lie together, how they are turned and in which unit they are written is no matter of them. */

const hundredths = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 100)

/** Centres left out, moved away from their pins, or said to be on the other side. */
const anyCentres: fc.Arbitrary<Readonly<Record<string, PlacedAt>>> = fc
  .record(
    Object.fromEntries(
      Object.keys(CENTRES).map((name) => [
        name,
        fc.record({
          out: fc.boolean(),
          // Never on the border of what is still at its pins.
          off: fc.constantFrom([0, 0], [0.3, 0], [0, -0.4], [4, 3], [-6, 0]),
          swapped: fc.constantFrom(false, false, true),
        }),
      ]),
    ),
  )
  .map((each) =>
    Object.fromEntries(
      Object.entries(each).flatMap(([name, { out, off, swapped }]) => {
        const { at, side } = CENTRES[name]!
        const other = side === 'top' ? 'bottom' : 'top'
        return out
          ? []
          : [[name, { at: [at[0] + off[0]!, at[1] + off[1]!], side: swapped ? other : side } as PlacedAt]]
      }),
    ),
  )

/** All that is said of a placement but for where the board lies. */
function saidOf(centres: Readonly<Record<string, PlacedAt>>, writing: Writing) {
  const text = placementText(centres, {
    place: writing.place,
    unit: writing.unit,
    heading: `Ref,X (${writing.unit}),Y (${writing.unit}),Rot,Side`,
  })
  const board = readAs([...filesOf(PLACED_BOARD, writing), readBoardFile({ name: 'centres.csv', text })])
  const { files, placed } = board.placement!
  const { compared, met, liesOn, against } = files[0]!
  return {
    fit: { compared, met, liesOn, against },
    placed: placed.map(({ reference, side }) => `${reference} ${side}`),
    awayMm: placed.map(({ awayMm }) => awayMm!),
    differences: placementDifferences(placed, { ...board, list: LIST }).map(
      ({ kind, components }) => `${kind}: ${components.map(({ reference }) => reference).join()}`,
    ),
  }
}

/** Not all of the board, and one part that it has not. */
const LIST = [{ names: ['R1', 'R2'], side: 'top' }, { names: ['C1'] }, { names: ['Q1'] }] as const

const WRITINGS: Readonly<Record<string, (moved: readonly [number, number]) => Writing>> = {
  moved: ([dx, dy]) => ({ ...AS_DRAWN, place: ([x, y]) => [x + dx, y + dy] }),
  'turned by a quarter': () => ({ ...AS_DRAWN, place: ([x, y]) => [-y, x], turned: true }),
  'turned by a half': () => ({ ...AS_DRAWN, place: ([x, y]) => [-x, -y] }),
  'written in inches': () => ({ ...AS_DRAWN, unit: 'inch' }),
  'moved, turned and written in inches': ([dx, dy]) => ({
    unit: 'inch',
    place: ([x, y]) => [dx - y, x + dy],
    turned: true,
  }),
}

test.each(Object.entries(WRITINGS))('a board and its placement %s together say the same', (_, writingOf) => {
  const move = fc.tuple(hundredths(-20_000, 20_000), hundredths(-20_000, 20_000))
  fc.assert(
    fc.property(anyCentres, move, (centres, moved) => {
      const [one, other] = [saidOf(centres, AS_DRAWN), saidOf(centres, writingOf(moved))]
      const { awayMm, ...rest } = other
      expect(rest).toEqual({ ...one, awayMm: undefined })
      awayMm.forEach((mm, at) => expect(Math.abs(mm - one.awayMm[at]!)).toBeLessThan(0.0011))
    }),
    { numRuns: 25 },
  )
})

test('the placements tried lie on the board and do not, and differ in what can differ', () => {
  const seen = fc.sample(anyCentres, { numRuns: 40, seed: 1 }).map((each) => saidOf(each, AS_DRAWN))
  expect(new Set(seen.map(({ fit }) => fit.liesOn))).toEqual(new Set([true, false]))
  const kinds = new Set(seen.flatMap(({ differences }) => differences.map((each) => each.split(':')[0])))
  for (const kind of [
    'listed, not placed',
    'on the board, not placed',
    'on the other side',
    'away from its pins',
  ])
    expect(kinds).toContain(kind)
})
