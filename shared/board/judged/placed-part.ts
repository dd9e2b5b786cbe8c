import type { Part } from '@/shared/rules/finding'
import { isWorse } from '@/shared/rules/parts'
import type { Point } from '../geometry/solid'

/** One thing judged at a place of the board, mm. */
export interface PlacedPart extends Part {
  readonly at: Point
  /** What was measured there, from end to end. */
  readonly ends?: readonly [Point, Point]
  /** The copper layer it is on. */
  readonly layer: string
  /** Puts parts without a margin in order: the smaller the worse; a thousandth is no difference. */
  readonly rank: number
}

/** How many places a finding leads to. */
export const PLACES = 10

export const isPlaced = (part: Part): part is PlacedPart => 'at' in part

/** The worst of some parts that have a place, the worst first. */
export const worstPlaces = (parts: readonly Part[]): PlacedPart[] =>
  parts
    .filter(isPlaced)
    .sort((one, other) =>
      isWorse(one, other) ? -1 : isWorse(other, one) ? 1 : Math.round(1000 * (one.rank - other.rank)),
    )
    .slice(0, PLACES)
