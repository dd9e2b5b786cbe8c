import { Groups, joinTouching, layerEdges, type LayerEdges } from './connected'
import type { Drilled } from './drill/drill-file'
import { isInside } from './geometry/distance'
import type { Point } from './geometry/solid'
import { landOf, type FoundLand } from './lands'
import { copperCount, type Layer } from './stack'

/** A hole's land on one layer, with its number among all copper of the board. */
export interface PlacedLand extends FoundLand {
  readonly layer: Layer
  readonly at: number
}

/** A hole as its drill file has it, with its lands. */
export interface FoundHole {
  readonly hole: Drilled
  readonly lands: readonly PlacedLand[]
}

/** All copper of a board, and which of it is one piece: where it touches, and through plated holes. */
export interface JoinedCopper {
  readonly stack: readonly Layer[]
  readonly lines: readonly LayerEdges[]
  readonly groups: Groups
  /** Which of it is one piece on its layer alone, by its number among all copper. */
  readonly islands: readonly number[]
  readonly holes: readonly FoundHole[]
}

export function joinedCopper(stack: readonly Layer[], drilled: readonly Drilled[]): JoinedCopper {
  const groups = new Groups(copperCount(stack))
  const lines = stack.map(({ copper, first }) => {
    const edges = layerEdges(copper)
    joinTouching(copper, edges, groups, first)
    return edges
  })
  const islands = Array.from({ length: copperCount(stack) }, (_, at) => groups.of(at))
  const holes = drilled.map((hole) => ({ hole, lands: landsOf(hole, stack) }))
  for (const { hole, lands } of holes)
    if (hole.plated !== false) lands.slice(1).forEach(({ at }) => groups.join(lands[0]!.at, at))
  return { stack, lines, groups, islands, holes }
}

const landsOf = (hole: Drilled, stack: readonly Layer[]): PlacedLand[] =>
  stack.flatMap((layer) => {
    const land = landOf(hole, layer.copper)
    return land ? [{ ...land, layer, at: layer.first + land.index }] : []
  })

/** The piece of copper that covers a place on a layer; undefined where none does. */
export function pieceAt(
  { groups }: JoinedCopper,
  { copper, first }: Layer,
  [x, y]: Point,
): number | undefined {
  const covering = copper
    .near({ minX: x, minY: y, maxX: x, maxY: y })
    .find((at) => isInside(copper.copper[at]!.solid, x, y))
  return covering === undefined ? undefined : groups.of(first + covering)
}

export const middleOf = ({ a, b }: Pick<Drilled, 'a' | 'b'>): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]
