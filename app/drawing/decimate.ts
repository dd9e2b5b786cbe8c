/** A reading: where along the axis, and how high. */
export type Point = { x: number; y: number }

/**
 * Thins a long run of readings to what a drawing can show: of each column one
 * unit wide it keeps the first, the lowest, the highest and the last reading,
 * in their order, so that no excursion is lost. Readings must rise in `x`
 * (in drawing units); a run that is already thin enough comes back whole.
 */
export function decimateByColumn(points: readonly Point[], columns: number): readonly Point[] {
  if (!(columns >= 1)) throw new RangeError('Thinning needs at least one column.')
  if (points.length <= 4 * columns) return points
  const start = points[0]!.x
  const width = (points.at(-1)!.x - start) / columns || 1
  const kept: Point[] = []
  let from = 0
  while (from < points.length) {
    const column = Math.floor((points[from]!.x - start) / width)
    let [lowest, highest, last] = [from, from, from]
    while (last + 1 < points.length && Math.floor((points[last + 1]!.x - start) / width) === column) {
      last++
      if (points[last]!.y < points[lowest]!.y) lowest = last
      if (points[last]!.y > points[highest]!.y) highest = last
    }
    for (const at of new Set([from, Math.min(lowest, highest), Math.max(lowest, highest), last])) {
      kept.push(points[at]!)
    }
    from = last + 1
  }
  return kept
}
