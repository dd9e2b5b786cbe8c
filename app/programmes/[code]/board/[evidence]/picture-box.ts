import type { Board } from '@/shared/board/board'
import { boxOfPoints } from '@/shared/board/geometry/solid'

/** Room left around a board in its picture, mm. */
export const MARGIN_MM = 1

/** The part of the plane that a board's picture shows, in mm with y downwards: its outline, or where its holes are. */
export function pictureBox({ outline, holes }: Board): {
  minX: number
  minY: number
  width: number
  height: number
} {
  const points = outline?.points ?? holes.flatMap(({ a, b }) => [a, b])
  if (points.length === 0) return { minX: 0, minY: 0, width: 1, height: 1 }
  const box = boxOfPoints(points)
  return {
    minX: box.minX - MARGIN_MM,
    minY: -box.maxY - MARGIN_MM,
    width: box.maxX - box.minX + 2 * MARGIN_MM,
    height: box.maxY - box.minY + 2 * MARGIN_MM,
  }
}
