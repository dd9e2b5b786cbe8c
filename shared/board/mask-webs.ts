import { Groups, joinTouching, layerEdges } from './connected'
import type { CopperLayer } from './copper'
import { gapsOf } from './gaps'
import type { Box, Point } from './geometry/solid'

/** What is left of the solder mask between two of its openings. */
export interface MaskWeb {
  readonly side: 'top' | 'bottom'
  readonly widthMm: number
  readonly at: Point
  /** What the openings are over, as far as it has a name. */
  readonly between: readonly [string, string]
}

/** A mask as it was read: what is drawn of it is open. */
export interface MaskLayer {
  readonly side: 'top' | 'bottom'
  readonly openings: CopperLayer
}

/** How wide a web is looked for, mm. */
export const MASK_WEB_REACH_MM = 0.5

/** The web of every two openings that come near each other; openings that touch are one. The narrowest first. */
export function maskWebs(
  masks: readonly MaskLayer[],
  nameAt: (side: MaskLayer['side'], at: Point) => string | undefined,
): MaskWeb[] {
  return masks
    .flatMap(({ side, openings }) => {
      const lines = layerEdges(openings)
      const groups = new Groups(openings.copper.length)
      joinTouching(openings, lines, groups, 0)
      const nameOf = (opening: number): string =>
        nameAt(side, middleOfBox(openings.copper[opening]!.box)) ?? 'opening'
      return gapsOf(lines, { groups, first: 0, reachMm: MASK_WEB_REACH_MM }).map(
        ({ groups: [one, other], gapMm, at }): MaskWeb => ({
          side,
          widthMm: gapMm,
          at,
          between: [nameOf(one), nameOf(other)],
        }),
      )
    })
    .sort((one, other) => one.widthMm - other.widthMm)
}

const middleOfBox = ({ minX, minY, maxX, maxY }: Box): Point => [(minX + maxX) / 2, (minY + maxY) / 2]
