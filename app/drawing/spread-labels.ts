/**
 * Moves labels apart that would overprint: keeps their order, keeps them within
 * `min` and `max`, and leaves at least `gap` between neighbours while there
 * is room. Positions in the order given.
 */
export function spreadLabels(wanted: readonly number[], gap: number, min: number, max: number): number[] {
  const order = wanted.map((_, position) => position).sort((a, b) => wanted[a]! - wanted[b]!)
  const placed = [...wanted]
  let floor = min
  for (const position of order) {
    placed[position] = Math.max(wanted[position]!, floor)
    floor = placed[position] + gap
  }
  let ceiling = max
  for (const position of order.toReversed()) {
    placed[position] = Math.min(placed[position]!, ceiling)
    ceiling = placed[position] - gap
  }
  return placed
}
