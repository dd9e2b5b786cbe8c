/** Members of a crowd, ascending, and the member at which it was first large enough. */
export type Crowd = { points: number[]; soundedAt: number }

/**
 * Crowds of points of one class: at least `count` of them within any `of`
 * successive points, between `from` and `to` (not included). Crowds that share
 * a member are one. The member that completes a crowd is of the class itself.
 */
export function crowdsOf(
  kind: number,
  { count, of }: { count: number; of: number },
  classes: Int8Array,
  from: number,
  to: number,
): Crowd[] {
  const members: number[] = []
  const crowds: Crowd[] = []
  let open: Crowd | undefined
  for (let index = from; index < to; index++) {
    if (classes[index] !== kind) continue
    members.push(index)
    const opening = members.length - count
    if (opening < 0 || index - members[opening]! >= of) continue
    const lastHeld = open?.points.at(-1) ?? -1
    if (open && members[opening]! <= lastHeld) {
      for (let at = opening; at < members.length; at++)
        if (members[at]! > lastHeld) open.points.push(members[at]!)
    } else {
      open = { points: members.slice(opening), soundedAt: index }
      crowds.push(open)
    }
  }
  return crowds
}
