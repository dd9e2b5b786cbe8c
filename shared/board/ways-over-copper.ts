import type { CopperGraph } from './copper-graph'

/** How places are reached: the length over width that lies between, and the place before each. */
export interface Ways {
  readonly squares: ReadonlyMap<number, number>
  readonly before: ReadonlyMap<number, number>
}

/** The ways from some places to every other that is joined to them, each with the least squares (Dijkstra). */
export function waysFrom(from: readonly number[], { steps }: Pick<CopperGraph, 'steps'>): Ways {
  const squares = new Map<number, number>(from.map((place) => [place, 0]))
  const before = new Map<number, number>()
  const done = new Set<number>()
  const heap = new Heap()
  for (const place of from) heap.push(place, 0)
  for (let next = heap.pop(); next !== undefined; next = heap.pop()) {
    if (done.has(next)) continue
    done.add(next)
    const far = squares.get(next)!
    for (const { to, squares: more } of steps[next]!) {
      if (far + more >= (squares.get(to) ?? Infinity)) continue
      squares.set(to, far + more)
      before.set(to, next)
      heap.push(to, far + more)
    }
  }
  return { squares, before }
}

/** Places by how far they are, the nearest first. */
class Heap {
  private readonly places: number[] = []
  private readonly keys: number[] = []

  push(place: number, key: number): void {
    let at = this.places.length
    for (let up = (at - 1) >> 1; at > 0 && this.keys[up]! > key; up = (at - 1) >> 1) {
      this.places[at] = this.places[up]!
      this.keys[at] = this.keys[up]!
      at = up
    }
    this.places[at] = place
    this.keys[at] = key
  }

  pop(): number | undefined {
    const [first, place, key] = [this.places[0], this.places.pop(), this.keys.pop()]
    if (place === undefined || key === undefined || this.places.length === 0) return first
    let at = 0
    for (let down = 1; down < this.places.length; down = 2 * at + 1) {
      if (down + 1 < this.places.length && this.keys[down + 1]! < this.keys[down]!) down++
      if (this.keys[down]! >= key) break
      this.places[at] = this.places[down]!
      this.keys[at] = this.keys[down]!
      at = down
    }
    this.places[at] = place
    this.keys[at] = key
    return first
  }
}
