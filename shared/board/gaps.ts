import type { Groups, LayerEdges } from './connected'
import { edgeGap, type Edge } from './geometry/distance'

/** The least clear distance of two pieces of copper on one layer, mm, and where it is. */
export interface Gap {
  readonly groups: readonly [number, number]
  readonly gapMm: number
  readonly at: readonly [x: number, y: number]
}

/** For every pair of pieces that come nearer than `reachMm`, their least gap: the smallest first. */
export function gapsOf(
  lines: LayerEdges,
  { groups, first, reachMm }: { groups: Groups; first: number; reachMm: number },
): Gap[] {
  const least = new Map<string, Gap>()
  lines.edges.forEach((edge, at) => {
    const mine = groups.of(first + lines.owner[at]!)
    for (const other of lines.near(edge, reachMm)) {
      if (other <= at) continue
      const theirs = groups.of(first + lines.owner[other]!)
      if (theirs === mine) continue
      const gapMm = edgeGap(edge, lines.edges[other]!)
      if (gapMm > reachMm) continue
      const pair = mine < theirs ? ([mine, theirs] as const) : ([theirs, mine] as const)
      const before = least.get(pair.join())
      if (!before || gapMm < before.gapMm)
        least.set(pair.join(), { groups: pair, gapMm, at: between(edge, lines.edges[other]!) })
    }
  })
  return [...least.values()].sort((one, other) => one.gapMm - other.gapMm)
}

/** About halfway between two edges: where a reader is led to. */
function between(one: Edge, other: Edge): readonly [number, number] {
  const nearest = [one.a, one.b].sort((p, q) => toMiddle(p, other) - toMiddle(q, other))[0]!
  const answer = [other.a, other.b].sort((p, q) => toMiddle(p, one) - toMiddle(q, one))[0]!
  return [(nearest[0] + answer[0]) / 2, (nearest[1] + answer[1]) / 2]
}

const toMiddle = (point: readonly [number, number], { a, b }: Edge): number =>
  Math.hypot(point[0] - (a[0] + b[0]) / 2, point[1] - (a[1] + b[1]) / 2)
