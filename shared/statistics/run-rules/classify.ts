import type { Chart } from '@/shared/statistics/charts/chart'

/*
 * Each gives every point of a chart a class: 1 for above or up, −1 for below or
 * down, 0 for neither. Comparisons are strict, multiply instead of dividing, and
 * allow for rounding: a point that lies exactly on a line is not beyond it.
 */

/** Shares of a value that its arithmetic may be off by: equal counts must not make a run beside their own mean. */
const ROUNDING = 1e-12

/** 1 above the line, −1 below, 0 on it or where there is none. */
function sideOf(value: number, line: number): -1 | 0 | 1 {
  const blur = ROUNDING * (Math.abs(value) + Math.abs(line))
  return value - line > blur ? 1 : line - value > blur ? -1 : 0
}

export function outsideLimits({ values, lower, upper }: Chart): Int8Array {
  const classes = new Int8Array(values.length)
  for (let i = 0; i < classes.length; i++)
    classes[i] = Math.max(sideOf(values[i]!, upper[i]!), 0) || Math.min(sideOf(values[i]!, lower[i]!), 0)
  return classes
}

export function sideOfCentre({ values, centre }: Chart): Int8Array {
  const classes = new Int8Array(values.length)
  for (let i = 0; i < classes.length; i++) classes[i] = sideOf(values[i]!, centre[i]!)
  return classes
}

export function beyondZone({ values, centre, sigma }: Chart, sigmas: number): Int8Array {
  const classes = new Int8Array(values.length)
  for (let i = 0; i < classes.length; i++) {
    const zone = sigmas * sigma[i]!
    classes[i] =
      Math.max(sideOf(values[i]!, centre[i]! + zone), 0) || Math.min(sideOf(values[i]!, centre[i]! - zone), 0)
  }
  return classes
}

/** 1 strictly inside the zone, else 0. */
export function insideZone({ values, centre, sigma }: Chart, sigmas: number): Int8Array {
  const classes = new Int8Array(values.length)
  for (let i = 0; i < classes.length; i++)
    classes[i] = Math.abs(values[i]! - centre[i]!) < sigmas * sigma[i]! ? 1 : 0
  return classes
}

/** Rise or fall from the point before; the first point has none. */
export function step({ values }: Chart): Int8Array {
  const classes = new Int8Array(values.length)
  for (let i = 1; i < classes.length; i++)
    classes[i] = values[i]! > values[i - 1]! ? 1 : values[i]! < values[i - 1]! ? -1 : 0
  return classes
}

/** 1 where a step goes against the step before it, else 0. */
export function turn(steps: Int8Array): Int8Array {
  const classes = new Int8Array(steps.length)
  for (let i = 1; i < classes.length; i++) classes[i] = steps[i]! * steps[i - 1]! < 0 ? 1 : 0
  return classes
}
