import { decimateByColumn, type Point } from './decimate'

/**
 * A line that has a value at every point of a plot, drawn in steps that change
 * half way between points; runs of one height are one stroke, and a gap (NaN) or
 * the start of a stretch breaks it. `at` is where each point stands across.
 */
export function stepPath(
  at: readonly number[],
  values: ArrayLike<number>,
  height: (value: number) => number,
  stretches: readonly { readonly from: number; readonly to: number }[],
  columns: number,
): string {
  return stretches.map(({ from, to }) => stretchPath(at, values, height, from, to, columns)).join('')
}

function stretchPath(
  at: readonly number[],
  values: ArrayLike<number>,
  height: (value: number) => number,
  from: number,
  to: number,
  columns: number,
): string {
  const corners: Point[] = []
  let path = ''
  const close = (): void => {
    if (corners.length > 1)
      path += `M${decimateByColumn(corners, columns)
        .map(({ x, y }) => `${tenth(x)} ${tenth(y)}`)
        .join('L')}`
    corners.length = 0
  }
  const edge = (index: number): number =>
    index <= from
      ? at[from]!
      : index >= to
        ? at[to - 1]! + (to - from === 1 ? 4 : 0)
        : (at[index - 1]! + at[index]!) / 2
  let start = from
  while (start < to) {
    let end = start + 1
    while (end < to && Object.is(values[end], values[start])) end++
    const value = values[start]!
    if (Number.isFinite(value)) {
      corners.push({ x: edge(start), y: height(value) }, { x: edge(end), y: height(value) })
    } else close()
    start = end
  }
  close()
  return path
}

const tenth = (value: number): number => Math.round(value * 10) / 10
