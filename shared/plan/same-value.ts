/**
 * Whether two values of a parameter say the same, whichever way their members
 * are ordered: a database gives them back in an order of its own. A member left
 * out is the same as one that is undefined.
 */
export function sameValue(one: unknown, other: unknown): boolean {
  if (one === other) return true
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false
  if (Array.isArray(one) || Array.isArray(other)) return sameList(one, other)
  const [before, now] = [one, other] as [Row, Row]
  return [...new Set([...Object.keys(before), ...Object.keys(now)])].every((key) =>
    sameValue(before[key], now[key]),
  )
}

type Row = Readonly<Record<string, unknown>>

const sameList = (one: unknown, other: unknown): boolean =>
  Array.isArray(one) &&
  Array.isArray(other) &&
  one.length === other.length &&
  one.every((entry, position) => sameValue(entry, other[position]))
