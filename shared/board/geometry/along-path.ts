import { pointToSegment, type Edge } from './distance'
import type { Point } from './solid'

/** A part of a closed path: from where to where along it, counted in its lines and parts of lines. */
export type Stretch = readonly [from: number, to: number]

/** As much of a polygon as matters near some paths: all of its edges there, and how its rings wind round one place there. */
export interface PolygonNear {
  readonly edges: readonly Edge[]
  readonly from: Point
  readonly turns: number
}

/** The parts of a closed path of straight lines that any of some things cover, in order and apart. */
export const coveredAlong = (
  path: readonly Point[],
  capsules: readonly Edge[],
  polygons: readonly PolygonNear[],
): Stretch[] =>
  joined([
    ...capsules.flatMap((capsule) => alongCapsule(path, capsule)),
    ...polygons.flatMap((polygon) => alongPolygon(path, polygon)),
  ])

const startOf = (path: readonly Point[], at: number): Point => path[at % path.length]!

/** A place along a path, counted in its lines. */
export function placeOn(path: readonly Point[], along: number): Point {
  const line = Math.floor(along)
  const [a, b] = [startOf(path, line), startOf(path, line + 1)]
  return [a[0] + (b[0] - a[0]) * (along - line), a[1] + (b[1] - a[1]) * (along - line)]
}

/** The length of a stretch of a path, mm. */
export function lengthAlong(path: readonly Point[], [from, to]: Stretch): number {
  let length = 0
  for (let at = from; at < to;) {
    const next = Math.min(to, Math.floor(at) + 1)
    const [a, b] = [placeOn(path, at), placeOn(path, next)]
    length += Math.hypot(b[0] - a[0], b[1] - a[1])
    at = next
  }
  return length
}

/** A round thing is convex: a line goes into it once and out of it once. */
function alongCapsule(path: readonly Point[], capsule: Edge): Stretch[] {
  const stretches: Stretch[] = []
  let before = beyond(capsule, path[0]!)
  for (let line = 0; line < path.length; line++) {
    const [a, b] = [path[line]!, startOf(path, line + 1)]
    const after = beyond(capsule, b)
    const inside = before <= 0 ? 0 : after <= 0 ? 1 : leastAlong(capsule, a, b, before + after)
    if (inside !== undefined) {
      const from = before <= 0 ? 0 : borderAlong(capsule, a, b, inside, 0)
      const to = after <= 0 ? 1 : borderAlong(capsule, a, b, inside, 1)
      stretches.push([line + from, line + to])
    }
    before = after
  }
  return stretches
}

/** How far a place lies outside a round thing; below 0 inside. */
const beyond = ({ a, b, radius }: Edge, [x, y]: Point): number =>
  pointToSegment(x, y, a[0], a[1], b[0], b[1]) - radius

const beyondAt = (capsule: Edge, a: Point, b: Point, t: number): number =>
  beyond(capsule, [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t])

const STEPS = 40

/** Where a line whose ends lie outside comes nearest, 0 to 1 along it; nothing where it stays outside. */
function leastAlong(capsule: Edge, a: Point, b: Point, endsBeyond: number): number | undefined {
  // Nowhere on the way does it come nearer than it goes on.
  if (endsBeyond > Math.hypot(b[0] - a[0], b[1] - a[1])) return undefined
  let [from, to] = [0, 1]
  for (let step = 0; step < STEPS; step++) {
    const [one, other] = [from + (to - from) / 3, to - (to - from) / 3]
    if (beyondAt(capsule, a, b, one) < beyondAt(capsule, a, b, other)) to = other
    else from = one
  }
  return beyondAt(capsule, a, b, from) <= 0 ? from : undefined
}

/** Where a line goes out of a round thing on the way from a place inside to an end outside. */
function borderAlong(capsule: Edge, a: Point, b: Point, inside: number, end: number): number {
  let [within, out] = [inside, end]
  for (let step = 0; step < STEPS; step++) {
    const middle = (within + out) / 2
    if (beyondAt(capsule, a, b, middle) <= 0) within = middle
    else out = middle
  }
  return within
}

/** By how the rings wind round the path's start, and where they are crossed which way from there on. */
function alongPolygon(
  path: readonly Point[],
  { edges, from: known, turns: knownTurns }: PolygonNear,
): Stretch[] {
  const [minX, minY, maxX, maxY] = boxAlong(path)
  const crossings: [along: number, turn: number][] = []
  const toStart: [along: number, turn: number][] = []
  const toStartFrom = flat([known, path[0]!])
  const round = flat([...path, path[0]!])
  for (const { a, b } of edges) {
    crossingsOf(toStartFrom, a, b, toStart)
    if (Math.max(a[0], b[0]) < minX || Math.min(a[0], b[0]) > maxX) continue
    if (Math.max(a[1], b[1]) < minY || Math.min(a[1], b[1]) > maxY) continue
    crossingsOf(round, a, b, crossings)
  }
  crossings.sort(([one], [other]) => one - other)
  const stretches: Stretch[] = []
  let turns = toStart.reduce((sum, [, turn]) => sum + turn, knownTurns)
  let from = 0
  for (const [along, turn] of [...crossings, [path.length, 0] as const]) {
    if (turns !== 0 && along > from) stretches.push([from, along])
    turns += turn
    from = along
  }
  return stretches
}

function boxAlong(path: readonly Point[]): readonly [number, number, number, number] {
  const [xs, ys] = [path.map(([x]) => x), path.map(([, y]) => y)]
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]
}

/** Points as x0, y0, x1, y1 …: an edge is tried on each line of a path. */
function flat(points: readonly Point[]): Float64Array {
  const out = new Float64Array(2 * points.length)
  points.forEach(([x, y], at) => {
    out[2 * at] = x
    out[2 * at + 1] = y
  })
  return out
}

/** On which side of a line from one place to another a place lies: above 0 on its left. */
const side = (ax: number, ay: number, bx: number, by: number, x: number, y: number): number =>
  (bx - ax) * (y - ay) - (by - ay) * (x - ax)

/**
 * Adds where the lines from each point to the next are crossed by an edge, and how the winding changes there: by 1 more where the
 * path goes over to the edge's left. Ends that lie on the other's line count to one side only, so that none counts twice.
 */
function crossingsOf(
  points: Float64Array,
  [cx, cy]: Point,
  [dx, dy]: Point,
  found: [along: number, turn: number][],
): void {
  let [px, py] = [points[0]!, points[1]!]
  let before = side(cx, cy, dx, dy, px, py)
  for (let at = 2; at < points.length; at += 2) {
    const [x, y] = [points[at]!, points[at + 1]!]
    const after = side(cx, cy, dx, dy, x, y)
    if (before >= 0 !== after >= 0 && side(px, py, x, y, cx, cy) >= 0 !== side(px, py, x, y, dx, dy) >= 0)
      found.push([at / 2 - 1 + before / (before - after), after >= 0 ? 1 : -1])
    before = after
    px = x
    py = y
  }
}

function joined(stretches: readonly Stretch[]): Stretch[] {
  const found: [number, number][] = []
  for (const [from, to] of stretches.toSorted(([one], [other]) => one - other)) {
    const last = found.at(-1)
    if (last && from <= last[1] + 1e-9) last[1] = Math.max(last[1], to)
    else found.push([from, to])
  }
  return found
}
