import type { Point } from '../geometry/solid'
import type { Pins } from './pin-boxes'
import type { PlacementRow } from './placement-file'

/** How a file would have to be moved to lie on the board; what it has on the bottom may be seen from below. */
export interface PlacementMove {
  readonly bottomMirrored: boolean
  /** In mm, after mirroring. */
  readonly top: Point
  readonly bottom: Point
}

/** Fewer centres than these tell no move: any of them could be brought anywhere. */
const MOVED_LEAST = 3

export const STAYS: PlacementMove = { bottomMirrored: false, top: [0, 0], bottom: [0, 0] }

/** What is on the bottom may count x the other way, as it is seen from below. */
export function mirroredOnly(rows: readonly PlacementRow[]): PlacementMove | undefined {
  return rows.filter(isBottom).length >= MOVED_LEAST ? { ...STAYS, bottomMirrored: true } : undefined
}

/** All of it by the same. */
export function shifted(rows: readonly PlacementRow[], pins: Pins): PlacementMove | undefined {
  const shift = middleShift(rows, pins)
  return shift && { bottomMirrored: false, top: shift, bottom: shift }
}

/** Both sides by a shift of their own, what is on the bottom seen from below. */
export function mirroredAndShifted(rows: readonly PlacementRow[], pins: Pins): PlacementMove | undefined {
  const below = rows.filter(isBottom)
  const above = rows.filter((row) => !isBottom(row))
  const bottom = middleShift(
    below.map(({ at: [x, y], ...row }) => ({ ...row, at: [-x, y] })),
    pins,
  )
  const top = above.length === 0 ? bottom : middleShift(above, pins)
  return bottom && top && { bottomMirrored: true, top, bottom }
}

/** The shift that half of the centres lie to each side of, along x and along y; most parts lie in the middle of their pins. */
function middleShift(rows: readonly PlacementRow[], pins: Pins): Point | undefined {
  if (rows.length < MOVED_LEAST) return undefined
  const asked = rows.map(({ reference, at: [x, y] }): Point => {
    const { minX, maxX, minY, maxY } = pins.get(reference.toUpperCase())!
    return [(minX + maxX) / 2 - x, (minY + maxY) / 2 - y]
  })
  const middle = (axis: 0 | 1): number => {
    const sorted = asked.map((shift) => shift[axis]).sort((one, other) => one - other)
    return Math.round(sorted[Math.floor(sorted.length / 2)]! * 1000) / 1000
  }
  return [middle(0), middle(1)]
}

const isBottom = ({ side }: PlacementRow): boolean => side === 'bottom'

/** Where a centre comes to lie by a move. */
export function moved({ at: [x, y], side }: Pick<PlacementRow, 'at' | 'side'>, move: PlacementMove): Point {
  const [dx, dy] = side === 'bottom' ? move.bottom : move.top
  return [(side === 'bottom' && move.bottomMirrored ? -x : x) + dx, y + dy]
}
