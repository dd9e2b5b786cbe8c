import type { CopperLayer } from './copper'
import { layerEdges } from './connected'
import { gapsOf, ROUNDED_MM, type NetGap } from './gaps'
import { isInside } from './geometry/distance'
import { extentAlong, type Point, type Solid } from './geometry/solid'
import type { JoinedCopper } from './joined-copper'

/** Two bare lands of different pieces of copper beside each other, of which one at least has a hole for a lead. */
export interface LandPair {
  readonly layer: string
  /** Numbers of the pieces that the lands belong to. */
  readonly pieces: readonly [number, number]
  readonly nets: readonly [string, string]
  readonly gapMm: number
  readonly at: Point
  readonly ends: readonly [Point, Point]
  /** From one land to the other, of length 1. */
  readonly across: Point
  /** How far they face each other, at right angles to that. */
  readonly sideBySideMm: number
}

interface LandPairTerms {
  readonly reachMm: number
  /** The mask of the side: where it is open the copper is bare. All is bare where there is none. */
  readonly mask: CopperLayer | undefined
  /** Copper of the layer, by its number there, that is the land of a hole for a lead. */
  readonly leadLands: ReadonlySet<number>
  netOf(group: number): string
}

/** Every two bare lands of one outer layer that come near each other, the nearest first. */
export function landPairs(joined: JoinedCopper, name: string, terms: LandPairTerms): LandPair[] {
  const layer = joined.stack.find((each) => each.name === name)
  if (!layer) return []
  const { mask, leadLands, reachMm, netOf } = terms
  const { copper } = layer.copper
  const pieceOf = (at: number): number => joined.groups.of(layer.first + at)
  const bare = (at: number): boolean => {
    const { by, box } = copper[at]!
    if (by !== 'flash' && !leadLands.has(at)) return false
    return !mask || isOpen(mask, [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2])
  }
  return gapsOf(layerEdges(layer.copper, bare), {
    groups: { of: (at) => at },
    first: 0,
    reachMm,
    wanted: (one, other) => (leadLands.has(one) || leadLands.has(other)) && pieceOf(one) !== pieceOf(other),
  }).map(({ groups: [one, other], gapMm, at, ends, across }) => {
    const pieces = [pieceOf(one), pieceOf(other)] as const
    return {
      layer: name,
      pieces,
      nets: [netOf(pieces[0]), netOf(pieces[1])],
      gapMm,
      at,
      ends,
      across,
      sideBySideMm: sideBySide(copper[one]!.solid, copper[other]!.solid, across),
    }
  })
}

/** How far two things reach beside each other, at right angles to the direction from one to the other; mm. */
function sideBySide(one: Solid, other: Solid, [dx, dy]: Point): number {
  const [from, to] = extentAlong(one, [-dy, dx])
  const [otherFrom, otherTo] = extentAlong(other, [-dy, dx])
  return Math.max(0, Math.min(to, otherTo) - Math.max(from, otherFrom))
}

/** The nearest pair of lands of every two pieces of copper, within a reach. */
export function landGaps(pairs: readonly LandPair[], reachMm: number): NetGap[] {
  const least = new Map<string, LandPair>()
  for (const pair of pairs) {
    const key = pair.pieces.toSorted((one, other) => one - other).join()
    if (pair.gapMm <= reachMm + ROUNDED_MM && !least.has(key)) least.set(key, pair)
  }
  return [...least.values()].map(({ layer, nets, gapMm, at, ends }) => ({ layer, nets, gapMm, at, ends }))
}

/** Whether a mask leaves a place open. */
export const isOpen = (mask: CopperLayer, [x, y]: Point): boolean =>
  mask.near({ minX: x, minY: y, maxX: x, maxY: y }).some((at) => isInside(mask.copper[at]!.solid, x, y))
