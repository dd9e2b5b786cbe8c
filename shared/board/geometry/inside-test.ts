import { isInside, windingBy } from './distance'
import type { Point, Solid } from './solid'

/** Fewer edges are looked through as quickly as they are sorted. */
const FEW_EDGES = 64

/** Whether points lie inside a solid, for many points of one solid: edges are looked up by height. */
export function insideTest(solid: Solid): (at: Point) => boolean {
  if (solid.kind === 'capsule') return ([x, y]) => isInside(solid, x, y)
  const edges = solid.rings.flatMap((ring) =>
    Array.from({ length: ring.length / 2 }, (_, at): readonly [number, number, number, number] => {
      const before = at === 0 ? ring.length - 2 : 2 * at - 2
      return [ring[before]!, ring[before + 1]!, ring[2 * at]!, ring[2 * at + 1]!]
    }),
  )
  if (edges.length <= FEW_EDGES) return ([x, y]) => windingBy(edges, x, y) !== 0
  let [least, most] = [Infinity, -Infinity]
  for (const [, ay, , by] of edges) [least, most] = [Math.min(least, ay, by), Math.max(most, ay, by)]
  const slabs: (typeof edges)[] = Array.from({ length: edges.length }, () => [])
  const slabOf = (y: number): number =>
    Math.min(slabs.length - 1, Math.max(0, Math.floor(((y - least) / (most - least || 1)) * slabs.length)))
  for (const edge of edges) {
    const last = slabOf(Math.max(edge[1], edge[3]))
    for (let slab = slabOf(Math.min(edge[1], edge[3])); slab <= last; slab++) slabs[slab]!.push(edge)
  }
  return ([x, y]) => y >= least && y <= most && windingBy(slabs[slabOf(y)]!, x, y) !== 0
}
