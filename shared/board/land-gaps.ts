import type { CopperLayer } from './copper'
import { layerEdges } from './connected'
import { gapsOf } from './gaps'
import { isInside } from './geometry/distance'
import type { Point } from './geometry/solid'
import type { JoinedCopper } from './joined-copper'

/** The clear distance of two bare lands of different nets, of which one at least has a hole for a lead. */
export interface LandGap {
  readonly layer: string
  readonly nets: readonly [string, string]
  readonly gapMm: number
  readonly at: Point
}

interface LandGapTerms {
  readonly reachMm: number
  /** The mask of the side: where it is open the copper is bare. All is bare where there is none. */
  readonly mask: CopperLayer | undefined
  /** Copper of the layer, by its number there, that is the land of a hole for a lead. */
  readonly leadLands: ReadonlySet<number>
  netOf(group: number): string
}

/** Gaps between the bare lands of one outer layer, the least of each pair of nets, the smallest first. */
export function landGaps(joined: JoinedCopper, name: string, terms: LandGapTerms): LandGap[] {
  const layer = joined.stack.find((each) => each.name === name)
  if (!layer) return []
  const { mask, leadLands, reachMm, netOf } = terms
  const bare = (at: number): boolean => {
    const { by, box } = layer.copper.copper[at]!
    if (by !== 'flash' && !leadLands.has(at)) return false
    return !mask || isOpen(mask, [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2])
  }
  return gapsOf(layerEdges(layer.copper, bare), {
    groups: joined.groups,
    first: layer.first,
    reachMm,
    wanted: (one, other) => leadLands.has(one) || leadLands.has(other),
  }).map(({ groups: [one, other], gapMm, at }) => ({
    layer: name,
    nets: [netOf(one), netOf(other)],
    gapMm,
    at,
  }))
}

/** Whether a mask leaves a place open. */
export const isOpen = (mask: CopperLayer, [x, y]: Point): boolean =>
  mask.near({ minX: x, minY: y, maxX: x, maxY: y }).some((at) => isInside(mask.copper[at]!.solid, x, y))
