import type { CopperLayer } from './copper'
import { indexOf } from './geometry/box-index'
import { edgeGap, edgesOf, isInside, type Edge } from './geometry/distance'
import { boxOfCapsule, type Solid } from './geometry/solid'

/** Copper closer than this is one piece, mm: a tenth of a micrometre is rounding, not a gap. */
export const TOUCHING_MM = 1e-4

/** Sets of numbers that grow together. */
export class Groups {
  private readonly parent: number[]
  constructor(size: number) {
    this.parent = Array.from({ length: size }, (_, index) => index)
  }
  of(index: number): number {
    let root = index
    while (this.parent[root] !== root) root = this.parent[root]!
    for (let at = index; at !== root;) [at, this.parent[at]] = [this.parent[at]!, root]
    return root
  }
  /** How many sets there are. */
  get count(): number {
    return this.parent.filter((parent, index) => parent === index).length
  }
  join(one: number, other: number): void {
    this.parent[this.of(one)] = this.of(other)
  }
}

/** Every line that the copper of a layer is bounded by, with whose it is, and an index of them. */
export interface LayerEdges {
  readonly edges: readonly Edge[]
  readonly owner: readonly number[]
  /** Numbers of the edges whose boxes come so near an edge's, mm; of those only that are wanted, where that is said. */
  near(edge: Edge, reach: number, wanted?: (other: number) => boolean): number[]
}

/** The edges of a layer's copper, or of some of it. */
export function layerEdges(
  { copper }: Pick<CopperLayer, 'copper'>,
  wanted: (at: number) => boolean = () => true,
): LayerEdges {
  const edges: Edge[] = []
  const owner: number[] = []
  copper.forEach(({ solid }, at) => {
    if (!wanted(at)) return
    for (const edge of edgesOf(solid)) {
      edges.push(edge)
      owner.push(at)
    }
  })
  const index = indexOf(edges.map(boxOfCapsule))
  return {
    edges,
    owner,
    near(edge, reach, wanted) {
      const { minX, minY, maxX, maxY } = boxOfCapsule(edge)
      return index?.search(minX - reach, minY - reach, maxX + reach, maxY + reach, wanted) ?? []
    },
  }
}

/**
 * Joins what touches on one layer in `groups`, whose numbers of this layer
 * begin at `first`: where edges meet, and where one lies wholly inside another.
 */
export function joinTouching(layer: CopperLayer, lines: LayerEdges, groups: Groups, first: number): void {
  const { owner } = lines
  lines.edges.forEach((edge, at) => {
    const mine = first + owner[at]!
    for (const other of lines.near(edge, TOUCHING_MM, (other) => other > at && owner[other] !== owner[at])) {
      const theirs = first + owner[other]!
      if (groups.of(mine) === groups.of(theirs)) continue
      if (edgeGap(edge, lines.edges[other]!) <= TOUCHING_MM) groups.join(mine, theirs)
    }
  })
  layer.copper.forEach(({ solid, box }, at) => {
    if (solid.kind !== 'polygon') return
    for (const inside of layer.near(box)) {
      if (groups.of(first + at) === groups.of(first + inside)) continue
      if (isInside(solid, ...pointOf(layer.copper[inside]!.solid))) groups.join(first + at, first + inside)
    }
  })
}

const pointOf = (solid: Solid): readonly [number, number] =>
  solid.kind === 'capsule' ? solid.a : [solid.rings[0]![0]!, solid.rings[0]![1]!]
