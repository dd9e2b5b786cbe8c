/** As many dots as are drawn of one set of readings. */
export const MAX_DOTS = 1000

/** Too many dots are drawn as so many at even ranks: the ends and the shape stay. */
export function thinned(values: readonly number[]): readonly number[] {
  if (values.length <= MAX_DOTS) return values
  const rising = [...values].sort((one, other) => one - other)
  return Array.from(
    { length: MAX_DOTS },
    (_, dot) => rising[Math.round((dot * (rising.length - 1)) / (MAX_DOTS - 1))] ?? 0,
  )
}
