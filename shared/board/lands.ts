import type { Copper, CopperLayer } from './copper'
import type { Drilled } from './drill/drill-file'
import { unionWithin } from './geometry/boolean'
import { isInside, toBoundary } from './geometry/distance'
import type { Box, Solid } from './geometry/solid'
import { ROUNDED_MM } from './gaps'
import type { Land } from './hole'

/** A region wider than this round a hole is a plane, not the hole's land, mm. */
export const LAND_MAX_MM = 12
/** How far round a hole its copper is put together. A ring wider than this is said to be this, mm. */
const WINDOW_MM = 1.5

/** A land whose middle is the hole's was drawn for it; one that is off may belong to a neighbour, mm. */
const CENTRED_MM = 0.02
export const isCentred = ({ box }: Copper, [x, y]: readonly [number, number]): boolean =>
  Math.hypot((box.minX + box.maxX) / 2 - x, (box.minY + box.maxY) / 2 - y) <= CENTRED_MM + ROUNDED_MM

export interface FoundLand {
  readonly land: Land
  readonly drawn: Copper
  /** Its number among the copper of the layer. */
  readonly index: number
}

/** The land of a hole on a layer; undefined where the hole's centre has no copper. */
export function landOf(hole: Drilled, layer: CopperLayer): FoundLand | undefined {
  const centre = [(hole.a[0] + hole.b[0]) / 2, (hole.a[1] + hole.b[1]) / 2] as const
  // A long land is often a stroke with a flash in its middle: a slot's land is the longer of the two.
  const isSlot = hole.a[0] !== hole.b[0] || hole.a[1] !== hole.b[1]
  const candidates = layer
    .near({ minX: centre[0], minY: centre[1], maxX: centre[0], maxY: centre[1] })
    .filter((at) => isInside(layer.copper[at]!.solid, ...centre))
    .map((index) => ({ ...layer.copper[index]!, index }))
  const drawn = candidates
    .filter(({ by, box }) => by !== 'region' || extent(box).every((side) => side <= LAND_MAX_MM))
    .sort(
      (one, other) =>
        Number(isCentred(other, centre)) - Number(isCentred(one, centre)) ||
        (isSlot ? 0 : Number(other.by === 'flash') - Number(one.by === 'flash')) ||
        ringIn(other.solid, hole) - ringIn(one.solid, hole),
    )[0]
  const land = drawn ?? candidates[0]
  if (!land) return undefined
  const [least, greatest] = extent(land.box).sort((one, other) => one - other)
  return {
    drawn: land,
    index: land.index,
    land: {
      by: land.by,
      widthMm: acrossCapsule(land.solid) ?? least!,
      lengthMm: greatest!,
      ringMm: isCentred(land, centre) ? ringIn(land.solid, hole) : copperRing(hole, layer),
    },
  }
}

const extent = ({ minX, minY, maxX, maxY }: Box): number[] => [maxX - minX, maxY - minY]

/** Across a round or long land, whichever way it is turned. */
const acrossCapsule = (solid: Solid): number | undefined =>
  solid.kind === 'capsule' ? 2 * solid.radius : undefined

/** From the wall of the hole, at both ends of a slot, to the edge of one solid. */
function ringIn(solid: Solid, { a, b, diameterMm }: Drilled): number {
  const rings = [a, b].map(([x, y]) => (isInside(solid, x, y) ? 1 : -1) * toBoundary(solid, x, y))
  return Math.min(...rings) - diameterMm / 2
}

/** Where no one thing was drawn for the hole, all copper round it together is its land. */
function copperRing(hole: Drilled, layer: CopperLayer): number {
  const reach = hole.diameterMm / 2 + WINDOW_MM
  const box = {
    minX: Math.min(hole.a[0], hole.b[0]) - reach,
    minY: Math.min(hole.a[1], hole.b[1]) - reach,
    maxX: Math.max(hole.a[0], hole.b[0]) + reach,
    maxY: Math.max(hole.a[1], hole.b[1]) + reach,
  }
  const solids = layer.near(box).map((at) => layer.copper[at]!.solid)
  const copper: Solid =
    solids.length === 1 ? solids[0]! : { kind: 'polygon', rings: unionWithin(box, solids) }
  return Math.min(WINDOW_MM, ringIn(copper, hole))
}
