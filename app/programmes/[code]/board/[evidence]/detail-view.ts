import type { PlacedPart } from '@/shared/board/judged/placed-part'
import type { Point } from '@/shared/board/geometry/solid'
import type { ViewBox } from './view-box'

/** How much of the board a detail shows at least, mm, and how many times what is measured there. */
const LEAST_MM = 4
const TIMES_MEASURED = 5

/** The square of the board that a detail shows, in mm with y downwards. */
export function detailBox({ at: [x, y], ends }: Pick<PlacedPart, 'at' | 'ends'>): ViewBox {
  const side = Math.max(LEAST_MM, TIMES_MEASURED * (ends ? distance(...ends) : 0))
  return { minX: x - side / 2, minY: -y - side / 2, width: side, height: side }
}

const distance = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(bx - ax, by - ay)

/** A dimension as drawings have it where there is no room between its ends: arrows from outside, y downwards. */
export interface Dimension {
  /** Each from its tail to the end it points at. */
  readonly arrows: readonly { readonly from: Point; readonly to: Point; readonly turnDeg: number }[]
  /** Where its number stands, beyond the second arrow. */
  readonly text: Point
}

/** Arrows as long as a share of the detail. */
const ARROW_SHARE = 0.22

/** The dimension between two places of a detail; undefined where they are one. */
export function dimensionOf(ends: readonly [Point, Point], { width }: ViewBox): Dimension | undefined {
  const [p, q] = ends.map(([x, y]): Point => [x, -y]) as [Point, Point]
  const length = distance(p, q)
  if (length === 0) return undefined
  const [dx, dy] = [(q[0] - p[0]) / length, (q[1] - p[1]) / length]
  const beyond = ([x, y]: Point, mm: number): Point => [x + dx * mm, y + dy * mm]
  const turnDeg = (Math.atan2(dy, dx) * 180) / Math.PI
  return {
    arrows: [
      { from: beyond(p, -ARROW_SHARE * width), to: p, turnDeg },
      { from: beyond(q, ARROW_SHARE * width), to: q, turnDeg: turnDeg + 180 },
    ],
    text: beyond(q, ARROW_SHARE * width),
  }
}
