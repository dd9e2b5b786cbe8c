import { pointToSegment, winding, type Edge } from './distance'
import type { Point, Solid } from './solid'

/** A part of a closed path: from where to where along it, counted in its lines and parts of lines. */
export type Stretch = readonly [from: number, to: number]

/** The parts of a closed path of straight lines that any of some solids cover, in order and apart. */
export function coveredAlong(path: readonly Point[], solids: readonly Solid[]): Stretch[] {
  const stretches = solids.flatMap((solid) =>
    solid.kind === 'capsule' ? alongCapsule(path, solid) : alongPolygon(path, solid.rings),
  )
  return joined(stretches)
}

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

/** Both sides of a round thing are convex: a line goes into it once and out of it once. */
function alongCapsule(path: readonly Point[], capsule: Edge): Stretch[] {
  const away = ([x, y]: Point): number => pointToSegment(x, y, ...capsule.a, ...capsule.b) - capsule.radius
  return path.flatMap((a, line): Stretch[] => {
    const b = startOf(path, line + 1)
    const at = (t: number): number => away([a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t])
    if (Math.min(at(0), at(1)) > Math.hypot(b[0] - a[0], b[1] - a[1])) return []
    const inside = at(0) <= 0 ? 0 : at(1) <= 0 ? 1 : leastOf(at)
    if (at(inside) > 0) return []
    return [[line + borderOf(at, inside, 0), line + borderOf(at, inside, 1)]]
  })
}

const STEPS = 40

/** Where a convex function of 0 to 1 is least. */
function leastOf(value: (t: number) => number): number {
  let [from, to] = [0, 1]
  for (let step = 0; step < STEPS; step++) {
    const [one, other] = [from + (to - from) / 3, to - (to - from) / 3]
    if (value(one) < value(other)) to = other
    else from = one
  }
  return (from + to) / 2
}

/** Where a function leaves nothing on the way from a place where it is not above to an end. */
function borderOf(value: (t: number) => number, inside: number, end: number): number {
  if (value(end) <= 0) return end
  let [within, beyond] = [inside, end]
  for (let step = 0; step < STEPS; step++) {
    const middle = (within + beyond) / 2
    if (value(middle) <= 0) within = middle
    else beyond = middle
  }
  return within
}

/** By how the rings wind round the path's start, and where they are crossed which way from there on. */
function alongPolygon(path: readonly Point[], rings: readonly (readonly number[])[]): Stretch[] {
  const box = boxAlong(path)
  const crossings: (readonly [along: number, turn: number])[] = []
  for (const ring of rings)
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const [cx, cy, dx, dy] = [ring[j]!, ring[j + 1]!, ring[i]!, ring[i + 1]!]
      if (Math.max(cx, dx) < box[0] || Math.min(cx, dx) > box[2]) continue
      if (Math.max(cy, dy) < box[1] || Math.min(cy, dy) > box[3]) continue
      path.forEach((a, line) => {
        const crossed = crossing(a, startOf(path, line + 1), [cx, cy], [dx, dy])
        if (crossed) crossings.push([line + crossed[0], crossed[1]])
      })
    }
  crossings.sort(([one], [other]) => one - other)
  const stretches: Stretch[] = []
  let turns = winding(rings, ...path[0]!)
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

const side = (a: Point, b: Point, [x, y]: Point): number =>
  (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])

/**
 * Where a line is crossed by an edge, 0 to 1 along it, and how the winding changes there: by 1 more where
 * the edge comes from the right. Ends that lie on the other's line count to one side only, so that none counts twice.
 */
function crossing(
  a: Point,
  b: Point,
  c: Point,
  d: Point,
): readonly [along: number, turn: number] | undefined {
  const [sideC, sideD] = [side(a, b, c), side(a, b, d)]
  if (sideC >= 0 === sideD >= 0) return undefined
  const [sideA, sideB] = [side(c, d, a), side(c, d, b)]
  if (sideA >= 0 === sideB >= 0) return undefined
  return [sideA / (sideA - sideB), sideB >= 0 ? 1 : -1]
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
