import { isInside, turnOf } from './distance'
import type { Point, Ring, Solid } from './solid'

/** Whether points lie inside a solid, for many points of one solid: edges are looked up by height. */
export function insideTest(solid: Solid): (at: Point) => boolean {
  if (solid.kind === 'capsule') return ([x, y]) => isInside(solid, x, y)
  const lines = linesOf(solid.rings)
  const slabs = slabsOf(lines)
  return ([x, y]) => {
    const slab = slabs.of(y)
    let turns = 0
    for (let n = slabs.starts[slab]!; n < slabs.starts[slab + 1]!; n++) {
      const line = 4 * slabs.lines[n]!
      turns += turnOf(lines[line]!, lines[line + 1]!, lines[line + 2]!, lines[line + 3]!, x, y)
    }
    return turns !== 0
  }
}

/** The lines of closed rings, each as ax, ay, bx, by. */
function linesOf(rings: readonly Ring[]): Float64Array {
  const lines = new Float64Array(2 * rings.reduce((sum, ring) => sum + ring.length, 0))
  let at = 0
  for (const ring of rings)
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      lines[at++] = ring[j]!
      lines[at++] = ring[j + 1]!
      lines[at++] = ring[i]!
      lines[at++] = ring[i + 1]!
    }
  return lines
}

/** Lines by the height they lie at: those of slab n are `lines` from `starts[n]` up to `starts[n + 1]`. */
interface Slabs {
  readonly starts: Uint32Array
  readonly lines: Uint32Array
  of(y: number): number
}

/** Slabs as high as a quarter of the mean line: thinner ones would list each line many times over. */
const SLABS_PER_LINE = 4

function slabsOf(lines: Float64Array): Slabs {
  const all = lines.length / 4
  let [least, most, heights] = [Infinity, -Infinity, 0]
  for (let at = 1; at < lines.length; at += 4) {
    least = Math.min(least, lines[at]!, lines[at + 2]!)
    most = Math.max(most, lines[at]!, lines[at + 2]!)
    heights += Math.abs(lines[at + 2]! - lines[at]!)
  }
  const span = most - least
  const count =
    heights > 0 ? Math.max(1, Math.min(all, Math.ceil((SLABS_PER_LINE * span * all) / heights))) : 1
  const of = (y: number): number =>
    Math.min(count - 1, Math.max(0, Math.floor(((y - least) / (span || 1)) * count)))
  const lowest = (line: number): number => of(Math.min(lines[4 * line + 1]!, lines[4 * line + 3]!))
  const highest = (line: number): number => of(Math.max(lines[4 * line + 1]!, lines[4 * line + 3]!))
  const starts = new Uint32Array(count + 1)
  for (let line = 0; line < all; line++)
    for (let slab = lowest(line); slab <= highest(line); slab++) starts[slab + 1]!++
  for (let slab = 0; slab < count; slab++) starts[slab + 1]! += starts[slab]!
  const listed = new Uint32Array(starts[count]!)
  const next = starts.slice()
  for (let line = 0; line < all; line++)
    for (let slab = lowest(line); slab <= highest(line); slab++) listed[next[slab]!++] = line
  return { starts, lines: listed, of }
}
