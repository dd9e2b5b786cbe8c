import type { LayerEdges } from './connected'
import { directionBetween, edgeGap, halfway, nearestPlaces } from './geometry/distance'
import type { Point } from './geometry/solid'

/** The least clear distance of two pieces of copper on one layer, mm, and where it is. */
export interface Gap {
  readonly groups: readonly [number, number]
  readonly gapMm: number
  readonly at: Point
  /** From the one to the other there. */
  readonly ends: readonly [Point, Point]
  /** The same way, of length 1, where they touch too. */
  readonly across: Point
}

/** Two nets that come near each other on one layer. */
export interface NetGap {
  readonly layer: string
  readonly nets: readonly [string, string]
  readonly gapMm: number
  readonly at: Point
  readonly ends: readonly [Point, Point]
}

/** What is told to the micrometre lies within a reach to the micrometre, mm. */
export const ROUNDED_MM = 0.0005

interface GapTerms {
  /** Which piece something drawn belongs to. */
  readonly groups: { of(at: number): number }
  /** How much copper of other layers is numbered before this layer's. */
  readonly first: number
  readonly reachMm: number
  /** Which two things drawn are asked for; all where nothing is said. */
  readonly wanted?: (one: number, other: number) => boolean
}

/** More things than are ever drawn on a board: two numbers below it make one. */
const PAIRED = 2 ** 26

/** For every pair of pieces that come nearer than `reachMm`, their least gap: the smallest first. */
export function gapsOf(lines: LayerEdges, { groups, first, reachMm, wanted }: GapTerms): Gap[] {
  const least = new Map<number, { one: number; other: number; gapMm: number }>()
  const pieceOf = lines.owner.map((owner) => groups.of(first + owner))
  lines.edges.forEach((edge, one) => {
    const mine = pieceOf[one]!
    // A plane's edges lie thickest beside others of its own.
    const near = lines.near(edge, reachMm + ROUNDED_MM, (other) => other > one && pieceOf[other] !== mine)
    for (const other of near) {
      const theirs = pieceOf[other]!
      if (wanted && !wanted(lines.owner[one]!, lines.owner[other]!)) continue
      const gapMm = edgeGap(edge, lines.edges[other]!)
      if (gapMm > reachMm + ROUNDED_MM) continue
      const pair = Math.min(mine, theirs) * PAIRED + Math.max(mine, theirs)
      const before = least.get(pair)
      if (!before || gapMm < before.gapMm) least.set(pair, { one, other, gapMm })
    }
  })
  return [...least]
    .map(([pair, { one, other, gapMm }]): Gap => {
      const edges = [lines.edges[one]!, lines.edges[other]!] as const
      const pieces = [Math.floor(pair / PAIRED), pair % PAIRED] as const
      const ends = nearestPlaces(...edges)
      return { groups: pieces, gapMm, at: halfway(ends), ends, across: directionBetween(...edges) }
    })
    .sort((one, other) => one.gapMm - other.gapMm)
}
