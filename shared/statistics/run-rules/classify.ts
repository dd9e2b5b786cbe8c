import type { Chart } from '@/shared/statistics/charts/chart'

/*
 * Each gives every point of a chart a class: 1 for above or up, −1 for below or
 * down, 0 for neither. Comparisons are strict and multiply instead of dividing,
 * so a point that lies exactly on a line is not beyond it.
 */

export function outsideLimits({ values, lower, upper }: Chart): Int8Array {
  const classes = new Int8Array(values.length)
  for (let i = 0; i < classes.length; i++)
    classes[i] = values[i]! > upper[i]! ? 1 : values[i]! < lower[i]! ? -1 : 0
  return classes
}

export function sideOfCentre({ values, centre }: Chart): Int8Array {
  const classes = new Int8Array(values.length)
  for (let i = 0; i < classes.length; i++)
    classes[i] = values[i]! > centre[i]! ? 1 : values[i]! < centre[i]! ? -1 : 0
  return classes
}

export function beyondZone({ values, centre, sigma }: Chart, sigmas: number): Int8Array {
  const classes = new Int8Array(values.length)
  for (let i = 0; i < classes.length; i++) {
    const deviation = values[i]! - centre[i]!
    const zone = sigmas * sigma[i]!
    classes[i] = deviation > zone ? 1 : deviation < -zone ? -1 : 0
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
