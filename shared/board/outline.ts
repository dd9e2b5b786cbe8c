import type { Drawn } from './gerber/gerber-layer'
import { isInside, toBoundary } from './geometry/distance'
import { boxOfPoints, type Box, type Point, type Solid } from './geometry/solid'

/** How far ends may lie apart and still meet, mm. */
const MEET_MM = 0.02

/** The outline of the board: its longest closed line; open where no line closes. */
export interface Outline {
  readonly points: readonly Point[]
  readonly closed: boolean
  /** Closed lines inside it: what is cut out of the board. */
  readonly cutouts: readonly (readonly Point[])[]
  readonly box: Box
}

/** Chains the lines of a profile layer by their ends; undefined where it has none. */
export function outlineOf(drawn: readonly Drawn[]): Outline | undefined {
  const lines = drawn.flatMap(({ solid, by }): [Point, Point][] =>
    by === 'stroke' && solid.kind === 'capsule' ? [[solid.a, solid.b]] : [],
  )
  if (lines.length === 0) return undefined
  const chains = chained(lines)
  const closed = chains.filter(isClosed)
  const longest = (closed.length > 0 ? closed : chains).sort((one, other) => length(other) - length(one))[0]!
  return {
    points: longest,
    closed: closed.length > 0,
    cutouts: closed.filter((chain) => chain !== longest && isWithin(chain, longest)),
    box: boxOfPoints(closed.length > 0 ? longest : lines.flat()),
  }
}

/** Whether all of a closed line lies inside another: one that repeats the outline does not. */
function isWithin(chain: readonly Point[], outline: readonly Point[]): boolean {
  const board: Solid = { kind: 'polygon', rings: [outline.flat()] }
  return chain.every(([x, y]) => isInside(board, x, y) && toBoundary(board, x, y) > MEET_MM)
}

const meets = (one: Point, other: Point): boolean =>
  Math.hypot(one[0] - other[0], one[1] - other[1]) <= MEET_MM

const isClosed = (chain: readonly Point[]): boolean => chain.length > 3 && meets(chain[0]!, chain.at(-1)!)

const length = (chain: readonly Point[]): number =>
  chain.slice(1).reduce((sum, [x, y], at) => sum + Math.hypot(x - chain[at]![0], y - chain[at]![1]), 0)

const BESIDE = [-1, 0, 1]

function chained(lines: readonly (readonly [Point, Point])[]): Point[][] {
  const ends = new Map<string, number[]>()
  const cellOf = ([x, y]: Point): readonly [number, number] => [
    Math.floor(x / MEET_MM),
    Math.floor(y / MEET_MM),
  ]
  const around = (point: Point): number[] => {
    const [column, row] = cellOf(point)
    return BESIDE.flatMap((dx) => BESIDE.flatMap((dy) => ends.get(`${column + dx},${row + dy}`) ?? []))
  }
  lines.forEach((line, at) => {
    for (const end of line) ends.set(cellOf(end).join(), [...(ends.get(cellOf(end).join()) ?? []), at])
  })
  const used = new Set<number>()
  /** The chain goes on from its last point as long as an unused line begins or ends there. */
  const goOn = (chain: Point[]): Point[] => {
    for (;;) {
      const end = chain.at(-1)!
      const next = around(end).find((at) => !used.has(at) && lines[at]!.some((point) => meets(point, end)))
      if (next === undefined) return chain
      used.add(next)
      const [a, b] = lines[next]!
      chain.push(meets(a, end) ? b : a)
    }
  }
  const chains: Point[][] = []
  lines.forEach(([a, b], at) => {
    if (used.has(at)) return
    used.add(at)
    chains.push(goOn(goOn([a, b]).reverse()))
  })
  return chains
}
