import { applied, type Transform } from './transform'

/** A closed ring as x0, y0, x1, y1 … in mm; the last point joins the first. */
export type Ring = readonly number[]

/**
 * Copper, or whatever a layer shows, in mm. Round things are kept exact as a
 * line with a radius; all else is rings filled by the nonzero rule, holes turning the other way.
 */
export type Solid =
  | { readonly kind: 'capsule'; readonly a: Point; readonly b: Point; readonly radius: number }
  | { readonly kind: 'polygon'; readonly rings: readonly Ring[] }

export type Point = readonly [x: number, y: number]

export interface Box {
  readonly minX: number
  readonly minY: number
  readonly maxX: number
  readonly maxY: number
}

export const disc = (x: number, y: number, radius: number): Solid => ({
  kind: 'capsule',
  a: [x, y],
  b: [x, y],
  radius,
})

export function transformed(solid: Solid, transform: Transform): Solid {
  if (solid.kind === 'capsule')
    return {
      kind: 'capsule',
      a: applied(transform, ...solid.a),
      b: applied(transform, ...solid.b),
      radius: solid.radius * transform.scale,
    }
  const turns = transform.a * transform.d - transform.b * transform.c < 0
  const rings = solid.rings.map((ring) => movedRing(ring, transform))
  return { kind: 'polygon', rings: turns ? rings.map(reversed) : rings }
}

function movedRing(ring: Ring, transform: Transform): Ring {
  const out: number[] = new Array<number>(ring.length)
  for (let i = 0; i < ring.length; i += 2) {
    const [x, y] = applied(transform, ring[i]!, ring[i + 1]!)
    out[i] = x
    out[i + 1] = y
  }
  return out
}

export function reversed(ring: Ring): Ring {
  const out: number[] = []
  for (let i = ring.length - 2; i >= 0; i -= 2) out.push(ring[i]!, ring[i + 1]!)
  return out
}

export const boxOf = (solid: Solid): Box =>
  solid.kind === 'capsule' ? boxOfCapsule(solid) : boxOfRings(solid.rings)

/** Read off in place: every ring of a plane is asked for its box. */
function boxOfRings(rings: readonly Ring[]): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const ring of rings)
    for (let i = 0; i < ring.length; i += 2) {
      const [x, y] = [ring[i]!, ring[i + 1]!]
      if (x < minX) minX = x
      if (x > maxX) maxX = x
      if (y < minY) minY = y
      if (y > maxY) maxY = y
    }
  return { minX, minY, maxX, maxY }
}

/** The box of a line with a radius. */
export const boxOfCapsule = ({ a, b, radius }: { a: Point; b: Point; radius: number }): Box => ({
  minX: Math.min(a[0], b[0]) - radius,
  minY: Math.min(a[1], b[1]) - radius,
  maxX: Math.max(a[0], b[0]) + radius,
  maxY: Math.max(a[1], b[1]) + radius,
})

function* pointsOf(rings: readonly Ring[]): Generator<Point> {
  for (const ring of rings) for (let i = 0; i < ring.length; i += 2) yield [ring[i]!, ring[i + 1]!]
}

/** From where to where a solid reaches along a direction of length 1, mm. */
export function extentAlong(solid: Solid, [dx, dy]: Point): readonly [from: number, to: number] {
  const radius = solid.kind === 'capsule' ? solid.radius : 0
  const points = solid.kind === 'capsule' ? [solid.a, solid.b] : pointsOf(solid.rings)
  let [from, to] = [Infinity, -Infinity]
  for (const [x, y] of points) {
    from = Math.min(from, x * dx + y * dy - radius)
    to = Math.max(to, x * dx + y * dy + radius)
  }
  return [from, to]
}

/** What a solid covers, mm²; of a capsule exact, of rings as they are drawn. */
export function areaOf(solid: Solid): number {
  if (solid.kind === 'polygon') return Math.abs(solid.rings.reduce((sum, ring) => sum + ringArea(ring), 0))
  const { a, b, radius } = solid
  return Math.PI * radius ** 2 + 2 * radius * Math.hypot(b[0] - a[0], b[1] - a[1])
}

/** The box round some points; turned inside out where there are none. */
export function boxOfPoints(points: Iterable<Point>): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const [x, y] of points) {
    minX = Math.min(minX, x)
    maxX = Math.max(maxX, x)
    minY = Math.min(minY, y)
    maxY = Math.max(maxY, y)
  }
  return { minX, minY, maxX, maxY }
}

/** Twice the area inside the ring would be this over 1; positive where it turns to the left. */
export function ringArea(ring: Ring): number {
  let twice = 0
  const last = ring.length - 2
  for (let i = 0, j = last; i < ring.length; j = i, i += 2)
    twice += ring[j]! * ring[i + 1]! - ring[i]! * ring[j + 1]!
  return twice / 2
}
