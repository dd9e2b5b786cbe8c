/** Where a reading stands on a strip: in hundredths of the strip's width, and its height in the stack (0 lowest). */
export interface PercentPlace {
  readonly at: number
  readonly level: number
}

/**
 * Every reading where it is, on the lowest level at which no dot before it is in
 * the way. `width` is that of a dot, in the same hundredths. No chance is in it:
 * the same readings stand alike on every page.
 */
export function percentDots<Reading extends { readonly value: number }>(
  readings: readonly Reading[],
  place: (value: number) => number,
  width: number,
): (Reading & PercentPlace)[] {
  if (!(width > 0)) throw new RangeError('Dots need a width greater than zero.')
  const lastAt: number[] = []
  return [...readings]
    .sort((one, other) => one.value - other.value)
    .map((reading) => {
      const at = place(reading.value)
      const free = lastAt.findIndex((last) => at - last >= width)
      const level = free < 0 ? lastAt.length : free
      lastAt[level] = at
      return { ...reading, at, level }
    })
}
