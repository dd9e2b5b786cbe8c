import { ringsOf } from './flattened'
import { ringArea, reversed, type Point, type Solid } from './solid'

/** What a solid covers that is moved along a line: exact for a disc; for all else the hull of both ends. */
export function swept(solid: Solid, a: Point, b: Point): Solid {
  if (solid.kind === 'capsule' && solid.a[0] === solid.b[0] && solid.a[1] === solid.b[1])
    return {
      kind: 'capsule',
      a: [a[0] + solid.a[0], a[1] + solid.a[1]],
      b: [b[0] + solid.a[0], b[1] + solid.a[1]],
      radius: solid.radius,
    }
  const points = ringsOf(solid)
    .flatMap((ring) =>
      Array.from({ length: ring.length / 2 }, (_, n): Point => [ring[2 * n]!, ring[2 * n + 1]!]),
    )
    .flatMap(([x, y]): Point[] => [
      [x + a[0], y + a[1]],
      [x + b[0], y + b[1]],
    ])
  const ring = convexHull(points).flat()
  return { kind: 'polygon', rings: [ringArea(ring) < 0 ? reversed(ring) : ring] }
}

/** Monotone chain: the outermost of some points, turning to the left. */
function convexHull(points: Point[]): Point[] {
  const sorted = [...points].sort((one, other) => one[0] - other[0] || one[1] - other[1])
  const half = (ordered: readonly Point[]): Point[] => {
    const chain: Point[] = []
    for (const point of ordered) {
      while (chain.length >= 2 && turn(chain.at(-2)!, chain.at(-1)!, point) <= 0) chain.pop()
      chain.push(point)
    }
    chain.pop()
    return chain
  }
  return [...half(sorted), ...half(sorted.reverse())]
}

const turn = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
