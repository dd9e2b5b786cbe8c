import type { Point, Solid } from './geometry/solid'
import { edgeGap, halfway, isInside, nearestPlaces, toBoundary, type Edge } from './geometry/distance'
import { ROUNDED_MM } from './gaps'
import { middleOf, type JoinedCopper } from './joined-copper'
import type { Outline } from './outline'

/** How near copper comes to an edge of the board, or to the wall of a hole without plating. Lengths in mm. */
export interface Clearance {
  readonly layer: string
  readonly net: string
  /** Below 0 where the copper lies beyond the edge. */
  readonly gapMm: number
  readonly at: Point
  /** From the copper to the edge; absent where there is no way between them. */
  readonly ends?: readonly [Point, Point]
}

export interface WallClearance extends Clearance {
  readonly diameterMm: number
  /** The hole is cut through the copper. */
  readonly cut: boolean
}

/** How far from an edge or a wall copper is looked for, mm: beyond it nothing is listed. */
export const CLEARANCE_REACH_MM = 2

type NetOf = (group: number) => string

/** For every piece of copper on a layer, how near it comes to the outline or a cut-out: the nearest first. */
export function edgeClearances(
  joined: JoinedCopper,
  { points, cutouts }: Outline,
  netOf: NetOf,
): Clearance[] {
  const board: Solid = { kind: 'polygon', rings: [points.flat()] }
  const gone = cutouts.map((ring): Solid => ({ kind: 'polygon', rings: [ring.flat()] }))
  const edges = [points, ...cutouts].flatMap(edgesAlong)
  return joined.stack
    .flatMap((layer, at) => {
      const nearest = new Nearest()
      const groupOf = (owner: number): number => joined.groups.of(layer.first + owner)
      for (const edge of edges) nearest.take(edge, joined, at, groupOf)
      layer.copper.copper.forEach(({ solid }, owner) => {
        const [x, y] = pointOf(solid)
        const off = isInside(board, x, y) ? gone.find((each) => isInside(each, x, y)) : board
        if (off) nearest.offer(groupOf(owner), { gapMm: -toBoundary(off, x, y), at: [x, y] })
      })
      return nearest.all().map(([group, found]) => ({ ...found, layer: layer.name, net: netOf(group) }))
    })
    .sort(nearestFirst)
}

/** For every hole without plating and every layer, the nearest copper that is not drawn for it: the nearest first. */
export function wallClearances(joined: JoinedCopper, netOf: NetOf): WallClearance[] {
  return joined.holes
    .filter(({ hole }) => hole.plated === false)
    .flatMap(({ hole, lands }) =>
      joined.stack.flatMap((layer, at): WallClearance[] => {
        const about = { layer: layer.name, diameterMm: hole.diameterMm }
        const land = lands.find((each) => each.layer === layer)
        if (land?.drawn.by === 'flash') return []
        if (land)
          return [
            { ...about, net: netOf(joined.groups.of(land.at)), gapMm: 0, at: middleOf(hole), cut: true },
          ]
        const nearest = new Nearest()
        const wall: Edge = { a: hole.a, b: hole.b, radius: hole.diameterMm / 2 }
        nearest.take(wall, joined, at, (owner) => joined.groups.of(layer.first + owner))
        const least = nearest.all().sort(([, one], [, other]) => one.gapMm - other.gapMm)[0]
        return least ? [{ ...about, ...least[1], net: netOf(least[0]), cut: false }] : []
      }),
    )
    .sort(nearestFirst)
}

const nearestFirst = (one: Clearance, other: Clearance): number => one.gapMm - other.gapMm

const pointOf = (solid: Solid): Point =>
  solid.kind === 'capsule' ? solid.a : [solid.rings[0]![0]!, solid.rings[0]![1]!]

function edgesAlong(points: readonly Point[]): Edge[] {
  return points.slice(1).map((b, at): Edge => ({ a: points[at]!, b, radius: 0 }))
}

type Found = Pick<Clearance, 'gapMm' | 'at' | 'ends'>

/** The nearest place of each piece of copper. */
class Nearest {
  private readonly least = new Map<number, Found>()

  offer(group: number, found: Found): void {
    const before = this.least.get(group)
    if (!before || found.gapMm < before.gapMm) this.least.set(group, found)
  }

  /** Offers all copper of one layer that an edge is near to. */
  take(edge: Edge, { lines }: JoinedCopper, layer: number, groupOf: (owner: number) => number): void {
    const { edges, owner, near } = lines[layer]!
    for (const at of near(edge, CLEARANCE_REACH_MM + ROUNDED_MM)) {
      const gapMm = edgeGap(edge, edges[at]!)
      if (gapMm > CLEARANCE_REACH_MM + ROUNDED_MM) continue
      const ends = nearestPlaces(edge, edges[at]!)
      this.offer(groupOf(owner[at]!), { gapMm, at: halfway(ends), ends })
    }
  }

  all(): [number, Found][] {
    return [...this.least]
  }
}
