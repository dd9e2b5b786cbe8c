/** A dot of a dot plot: its reading, its place along the axis, and its height in the stack (0 on the axis). */
export type Dot = { value: number; at: number; level: number }

/**
 * Stacks readings that would overprint: the axis is cut into bins one dot wide
 * and each bin's dots stand on one another at its middle.
 */
export function dotStacks(
  values: readonly number[],
  place: (value: number) => number,
  dotWidth: number,
): Dot[] {
  if (!(dotWidth > 0)) throw new RangeError('Dots need a width greater than zero.')
  const heights = new Map<number, number>()
  return [...values]
    .sort((a, b) => a - b)
    .map((value) => {
      const bin = Math.floor(place(value) / dotWidth)
      const level = heights.get(bin) ?? 0
      heights.set(bin, level + 1)
      return { value, at: (bin + 0.5) * dotWidth, level }
    })
}
