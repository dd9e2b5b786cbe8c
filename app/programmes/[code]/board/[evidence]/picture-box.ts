import type { Board } from '@/shared/board/board'

/** Room left around a board in its picture, mm. */
const MARGIN_MM = 1

/** The part of the plane that a board's picture shows, in mm with y downwards: its outline, or where its holes are. */
export function pictureBox({ outline, holes }: Board): {
  minX: number
  minY: number
  width: number
  height: number
} {
  const points = outline?.points ?? holes.flatMap(({ a, b }) => [a, b])
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => -y)]
  const least = (values: number[]) => values.reduce((one, other) => Math.min(one, other), Infinity)
  const most = (values: number[]) => values.reduce((one, other) => Math.max(one, other), -Infinity)
  if (points.length === 0) return { minX: 0, minY: 0, width: 1, height: 1 }
  const [minX, minY] = [least(xs) - MARGIN_MM, least(ys) - MARGIN_MM]
  return { minX, minY, width: most(xs) + MARGIN_MM - minX, height: most(ys) + MARGIN_MM - minY }
}
