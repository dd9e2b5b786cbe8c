import type { Point } from '@/shared/board/geometry/solid'
import { formatNumber } from '@/shared/quantity/format'

/** The name of a place in tables and pictures: the letter of its matter, and its rank. */
export const placeName = (letter: string, at: number): string => `${letter}${at + 1}`

/** Where a place stands in the picture. */
export const markId = (name: string): string => `at-${name}`

/** A place in a table, which leads to where it is marked. */
export const PlaceLink = ({ name }: { name: string }) => (
  <a href={`#${markId(name)}`} title="Show it in the picture">
    {name}
  </a>
)

/** Where on the board, in mm as its files count. */
export const placeInWords = ([x, y]: Point): string =>
  `${formatNumber(Math.round(x * 100) / 100)}, ${formatNumber(Math.round(y * 100) / 100)}`
