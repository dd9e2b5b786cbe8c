import type { Point } from '../geometry/solid'

/** Centre of an arc and the angle it goes round, radians, positive to the left. */
export interface Arc {
  readonly centre: Point
  readonly sweep: number
}

/** How far two radii of one arc may differ, mm: beyond it the arc is none. */
const RADII_APART_MM = 0.5

/**
 * The arc from one point to another by its offset `i`, `j` (specification 4.7).
 * In multi-quadrant mode the offset is signed and equal ends are a whole turn; in
 * single-quadrant mode it has no signs, the arc stays below a quarter turn, and the
 * one of four centres is right that fits best. Undefined where none fits. Lengths in mm.
 */
export function arcOf(
  from: Point,
  to: Point,
  offset: Point,
  { left, single }: { left: boolean; single: boolean },
): Arc | undefined {
  if (!single) return fitting(from, to, [from[0] + offset[0], from[1] + offset[1]], left, true)
  const [i, j] = [Math.abs(offset[0]), Math.abs(offset[1])]
  const arcs = [
    [i, j],
    [-i, j],
    [i, -j],
    [-i, -j],
  ].flatMap(([x, y]) => fitting(from, to, [from[0] + x!, from[1] + y!], left, false) ?? [])
  const quarter = arcs.filter(({ sweep }) => Math.abs(sweep) <= Math.PI / 2 + 1e-6)
  return quarter.sort((one, other) => apart(from, to, one.centre) - apart(from, to, other.centre))[0]
}

const apart = (from: Point, to: Point, centre: Point): number =>
  Math.abs(
    Math.hypot(from[0] - centre[0], from[1] - centre[1]) - Math.hypot(to[0] - centre[0], to[1] - centre[1]),
  )

function fitting(from: Point, to: Point, centre: Point, left: boolean, whole: boolean): Arc | undefined {
  if (apart(from, to, centre) > RADII_APART_MM) return undefined
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0])
  const end = Math.atan2(to[1] - centre[1], to[0] - centre[0])
  const closed = Math.hypot(to[0] - from[0], to[1] - from[1]) < 1e-9
  if (closed) return { centre, sweep: whole ? (left ? 2 : -2) * Math.PI : 0 }
  let sweep = end - start
  if (left && sweep <= 0) sweep += 2 * Math.PI
  if (!left && sweep >= 0) sweep -= 2 * Math.PI
  return { centre, sweep }
}
