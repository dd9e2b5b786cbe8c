/** An unbroken run of points of one class: `first` to `last`, both included. */
export type Run = { first: number; last: number; kind: number }

/**
 * Runs of at least `min` successive points of the same class, between `from`
 * and `to` (not included). Class 0 belongs to no run.
 */
export function runsOfAtLeast(min: number, classes: Int8Array, from: number, to: number): Run[] {
  const runs: Run[] = []
  let first = from
  while (first < to) {
    const kind = classes[first]!
    let end = first + 1
    while (end < to && classes[end] === kind) end++
    if (kind !== 0 && end - first >= min) runs.push({ first, last: end - 1, kind })
    first = end
  }
  return runs
}

/** The whole numbers from `first` to `last`, both included. */
export function indices(first: number, last: number): number[] {
  const all: number[] = []
  for (let index = first; index <= last; index++) all.push(index)
  return all
}
