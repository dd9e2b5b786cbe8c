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

export function boxOf(solid: Solid): Box {
  if (solid.kind === 'capsule') {
    const { a, b, radius } = solid
    return {
      minX: Math.min(a[0], b[0]) - radius,
      minY: Math.min(a[1], b[1]) - radius,
      maxX: Math.max(a[0], b[0]) + radius,
      maxY: Math.max(a[1], b[1]) + radius,
    }
  }
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const ring of solid.rings)
    for (let i = 0; i < ring.length; i += 2) {
      minX = Math.min(minX, ring[i]!)
      maxX = Math.max(maxX, ring[i]!)
      minY = Math.min(minY, ring[i + 1]!)
      maxY = Math.max(maxY, ring[i + 1]!)
    }
  return { minX, minY, maxX, maxY }
}

export const touches = (one: Box, other: Box, reach = 0): boolean =>
  one.minX <= other.maxX + reach &&
  other.minX <= one.maxX + reach &&
  one.minY <= other.maxY + reach &&
  other.minY <= one.maxY + reach

/** Twice the area inside the ring would be this over 1; positive where it turns to the left. */
export function ringArea(ring: Ring): number {
  let twice = 0
  const last = ring.length - 2
  for (let i = 0, j = last; i < ring.length; j = i, i += 2)
    twice += ring[j]! * ring[i + 1]! - ring[i]! * ring[j + 1]!
  return twice / 2
}
