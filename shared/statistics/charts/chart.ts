/** What is plotted. */
export type ChartKind =
  | 'individuals'
  | 'moving-range'
  | 'mean'
  | 'range'
  | 'deviation'
  | 'weighted-average'
  | 'proportion-defective'
  | 'count-defective'
  | 'defect-count'
  | 'defects-per-unit'

/**
 * How the points behave while nothing is wrong; decides which run rules mean
 * anything. Zone rules assume near-normal points; runs and trends need points
 * that do not share readings.
 */
export type PointBehaviour = 'near-normal' | 'skewed' | 'correlated'

/** Whether the limits come from these very points, or were set before them. */
export type LimitsOrigin =
  | { kind: 'estimated'; pointsUsed: number; pointsLeftOut: readonly number[] }
  | { kind: 'frozen'; setBy: string }

/** A stretch with its own limits: points `from` up to, not including, `to`. */
export type ChartPhase = { name: string; from: number; to: number; limits: LimitsOrigin }

/**
 * A control chart. Columns run in parallel, one entry a point, in the unit of
 * the plotted statistic; they are typed arrays because a log may hold 50,000. `positions` is the index of the reading or subgroup
 * that the point belongs to (a moving range belongs to its later reading).
 * `sigma` is the standard deviation of the plotted point, not of the process.
 */
export type Chart = {
  kind: ChartKind
  behaviour: PointBehaviour
  positions: Uint32Array
  values: Float64Array
  centre: Float64Array
  sigma: Float64Array
  lower: Float64Array
  upper: Float64Array
  phases: readonly ChartPhase[]
}

export type ChartPoint = {
  position: number
  value: number
  centre: number
  sigma: number
  lower: number
  upper: number
}

/** One point of a chart with its limits. Throws RangeError when there is no such point. */
export function pointAt(chart: Chart, index: number): ChartPoint {
  const value = chart.values[index]
  if (value === undefined)
    throw new RangeError(`The chart has ${chart.values.length} points; there is no point ${index}.`)
  return {
    position: chart.positions[index]!,
    value,
    centre: chart.centre[index]!,
    sigma: chart.sigma[index]!,
    lower: chart.lower[index]!,
    upper: chart.upper[index]!,
  }
}
