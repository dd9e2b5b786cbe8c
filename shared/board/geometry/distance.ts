import { indexOf } from './box-index'
import { boxOf, type Point, type Ring, type Solid } from './solid'

/** Distance of a point from a line between two points, mm. */
export function pointToSegment(
  px: number,
  py: number,
  ax: number,
  ay: number,
  bx: number,
  by: number,
): number {
  const [dx, dy] = [bx - ax, by - ay]
  const squared = dx * dx + dy * dy
  const along = squared === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / squared))
  return Math.hypot(px - ax - along * dx, py - ay - along * dy)
}

/** Least distance of two lines between points, mm; 0 where they cross. */
export function segmentToSegment(a: Point, b: Point, c: Point, d: Point): number {
  if (crosses(a, b, c, d)) return 0
  return Math.min(
    pointToSegment(a[0], a[1], c[0], c[1], d[0], d[1]),
    pointToSegment(b[0], b[1], c[0], c[1], d[0], d[1]),
    pointToSegment(c[0], c[1], a[0], a[1], b[0], b[1]),
    pointToSegment(d[0], d[1], a[0], a[1], b[0], b[1]),
  )
}

const side = (a: Point, b: Point, p: Point): number =>
  (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])

const crosses = (a: Point, b: Point, c: Point, d: Point): boolean =>
  side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0

/** By how much a line of a closed ring winds round a point: 1 to the left, -1 to the right, 0 where it passes beside. */
export function turnOf(ax: number, ay: number, bx: number, by: number, x: number, y: number): number {
  if (ay <= y === by <= y) return 0
  const left = (bx - ax) * (y - ay) - (x - ax) * (by - ay)
  if (ay <= y) return left > 0 ? 1 : 0
  return left < 0 ? -1 : 0
}

/** How often closed rings wind round a point: inside by the nonzero rule where this is not 0. */
export function winding(rings: readonly Ring[], x: number, y: number): number {
  let turns = 0
  if (rings.length <= FEW_RINGS) for (const ring of rings) turns += windingOf(ring, x, y)
  else for (const at of ringIndexOf(rings)?.search(x, y, x, y) ?? []) turns += windingOf(rings[at]!, x, y)
  return turns
}

/** Fewer rings are gone through as quickly as they are looked up. */
const FEW_RINGS = 8

/** Where each ring lies, of those that were asked for: a plane has thousands of rings, and most lie elsewhere. */
const ringIndexes = new WeakMap<readonly Ring[], ReturnType<typeof indexOf>>()

function ringIndexOf(rings: readonly Ring[]): ReturnType<typeof indexOf> {
  const known = ringIndexes.get(rings)
  if (known) return known
  const index = indexOf(rings.map((ring) => boxOf({ kind: 'polygon', rings: [ring] })))
  ringIndexes.set(rings, index)
  return index
}

function windingOf(ring: Ring, x: number, y: number): number {
  let turns = 0
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2)
    turns += turnOf(ring[j]!, ring[j + 1]!, ring[i]!, ring[i + 1]!, x, y)
  return turns
}

export const isInside = (solid: Solid, x: number, y: number): boolean =>
  solid.kind === 'capsule'
    ? pointToSegment(x, y, ...solid.a, ...solid.b) <= solid.radius
    : winding(solid.rings, x, y) !== 0

/** Least distance of a point from the boundary of a solid, mm: whichever side of it the point is on. */
export function toBoundary(solid: Solid, x: number, y: number): number {
  if (solid.kind === 'capsule') return Math.abs(pointToSegment(x, y, ...solid.a, ...solid.b) - solid.radius)
  let least = Infinity
  for (const ring of solid.rings)
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2)
      least = Math.min(least, pointToSegment(x, y, ring[j]!, ring[j + 1]!, ring[i]!, ring[i + 1]!))
  return least
}

/** The lines a solid's distance is measured from, each with the radius round it. */
export interface Edge {
  readonly a: Point
  readonly b: Point
  readonly radius: number
}

export function edgesOf(solid: Solid): Edge[] {
  if (solid.kind === 'capsule') return [solid]
  const edges: Edge[] = []
  for (const ring of solid.rings) {
    let a: Point = [ring[ring.length - 2]!, ring[ring.length - 1]!]
    for (let i = 0; i < ring.length; i += 2) {
      const b: Point = [ring[i]!, ring[i + 1]!]
      edges.push({ a, b, radius: 0 })
      a = b
    }
  }
  return edges
}

/** Clear distance of two edges with their radii, mm; never below 0. */
export const edgeGap = (one: Edge, other: Edge): number =>
  Math.max(0, segmentToSegment(one.a, one.b, other.a, other.b) - one.radius - other.radius)

/** The nearest points of the middle lines of two edges. */
function nearestPoints(one: Edge, other: Edge): readonly [Point, Point] {
  const pairs = [
    [one.a, nearestOn(other, one.a)],
    [one.b, nearestOn(other, one.b)],
    [nearestOn(one, other.a), other.a],
    [nearestOn(one, other.b), other.b],
  ] as const
  return pairs.reduce((least, pair) => (apart(pair) < apart(least) ? pair : least))
}

const apart = ([p, q]: readonly [Point, Point]): number => Math.hypot(p[0] - q[0], p[1] - q[1])

/** The nearest places of two edges, each on its own: where the clear distance between them begins and ends. */
export function nearestPlaces(one: Edge, other: Edge): readonly [Point, Point] {
  const [p, q] = nearestPoints(one, other)
  const length = apart([p, q])
  if (length === 0) return [p, p]
  // From the middle line of a round thing to its edge, so that unequal radii do not shift the place.
  const beside = (share: number): Point => [p[0] + (q[0] - p[0]) * share, p[1] + (q[1] - p[1]) * share]
  return [beside(one.radius / length), beside(1 - other.radius / length)]
}

/** Halfway between two places: where a reader is led to. */
export const halfway = ([p, q]: readonly [Point, Point]): Point => [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2]

/** The direction across the gap of two edges, of length 1; along x where they meet. */
export function directionBetween(one: Edge, other: Edge): Point {
  const [p, q] = nearestPoints(one, other)
  const length = apart([p, q])
  return length === 0 ? [1, 0] : [(q[0] - p[0]) / length, (q[1] - p[1]) / length]
}

function nearestOn({ a, b }: Edge, [x, y]: Point): Point {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const squared = dx * dx + dy * dy
  const along = squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / squared))
  return [a[0] + along * dx, a[1] + along * dy]
}
