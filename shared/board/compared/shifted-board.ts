import type { Board } from '../board'
import type { Point } from '../geometry/solid'

/** A board as it is, in another place. What is judged of it stays the same. */
export function shiftedBoard(board: Board, [dx, dy]: Point): Board {
  const moved = ([x, y]: Point): Point => [x + dx, y + dy]
  const placed = <T extends { readonly at: Point; readonly ends?: readonly [Point, Point] }>(
    things: readonly T[],
  ): T[] =>
    things.map((thing) => ({
      ...thing,
      at: moved(thing.at),
      ...(thing.ends && { ends: [moved(thing.ends[0]), moved(thing.ends[1])] }),
    }))
  const { outline, netlist } = board
  return {
    ...board,
    holes: board.holes.map((hole) => ({ ...hole, a: moved(hole.a), b: moved(hole.b) })),
    outline: outline && {
      ...outline,
      points: outline.points.map(moved),
      cutouts: outline.cutouts.map((points) => points.map(moved)),
      box: {
        minX: outline.box.minX + dx,
        maxX: outline.box.maxX + dx,
        minY: outline.box.minY + dy,
        maxY: outline.box.maxY + dy,
      },
    },
    joints: placed(board.joints),
    gaps: placed(board.gaps),
    landGaps: placed(board.landGaps),
    landPairs: placed(board.landPairs),
    maskWebs: placed(board.maskWebs),
    planeJoints: placed(board.planeJoints),
    marks: placed(board.marks),
    edges: placed(board.edges),
    walls: placed(board.walls),
    netConductors: placed(board.netConductors),
    netPaths: placed(board.netPaths),
    netlist: netlist && { ...netlist, differences: placed(netlist.differences) },
  }
}
