/** Least and most of long lists, whose values would overflow the arguments of `Math.min`; what is no number is passed over. */
export function extentOf(lists: readonly ArrayLike<number>[]): [number, number] {
  let [least, most] = [Infinity, -Infinity]
  for (const list of lists)
    for (let index = 0; index < list.length; index++) {
      const value = list[index]!
      if (value < least) least = value
      if (value > most) most = value
    }
  if (!(most > least)) return Number.isFinite(least) ? [least - 1, least + 1] : [0, 1]
  return [least, most]
}
