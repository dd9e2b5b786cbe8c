/** Least and most of long lists, whose values would overflow the arguments of `Math.min`; what is no number is passed over. */
export function extentOf(lists: readonly ArrayLike<number>[]): [number, number] {
  let [min, max] = [Infinity, -Infinity]
  for (const list of lists)
    for (let index = 0; index < list.length; index++) {
      const value = list[index]!
      if (value < min) min = value
      if (value > max) max = value
    }
  if (!(max > min)) return Number.isFinite(min) ? [min - 1, min + 1] : [0, 1]
  return [min, max]
}
