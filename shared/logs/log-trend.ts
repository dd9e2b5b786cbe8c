import { addDays, DAYS_PER_MONTH, MS_PER_DAY } from '@/shared/quantity/calendar'
import type { Series } from './log-series'
import { limitCrossing } from '@/shared/statistics/regression/limit-crossing'
import { fitLine, type LineFit } from '@/shared/statistics/regression/straight-line'
import { dayOf } from './log-day'

/** A line through three points has one degree of freedom: too few to say how sure it is. */
export const FEWEST_FOR_TREND = 4
/** Dates beyond this are said as "not within ten years". */
const HORIZON_DAYS = 3653
/** So that a crossing on a midnight is not told as the day before. */
const ROUNDING_DAYS = 1e-6

/** A rising trend towards an upper limit, since the series last fell back. */
export interface LogTrend {
  readonly fit: LineFit
  /** Instant from which days are counted: the first reading used. */
  readonly from: number
  readonly readings: number
  readonly newestOn: string
  readonly perMonth: number
  /** Days after the newest reading; undefined when not within ten years. */
  readonly daysByLine: number | undefined
  readonly daysByPrediction: number | undefined
  /** The same as dates. */
  readonly crossesOn: string | undefined
  readonly mayCrossOn: string | undefined
}

/** Where a series last fell by more than `resetFall` between two readings: a bath exchanged. */
function startOfTrend(values: readonly number[], resetFall: number): number {
  let start = 0
  for (let index = 1; index < values.length; index++)
    if (values[index - 1]! - values[index]! > resetFall) start = index
  return start
}

/** Instants with a reading since the series last fell so far; several readings of one instant are one. */
export const sinceLastFall = ({ instants, values }: Series, resetFall: number): number =>
  new Set(instants.slice(startOfTrend(values, resetFall))).size

/**
 * The trend of a series since it last fell by more than `resetFall` between two
 * readings (a bath exchanged), and when it reaches the upper limit: by the line,
 * and by its one-sided prediction bound. Undefined with fewer than four readings
 * since then, or all on one instant.
 *
 * Units: those of the series; days. Source: least squares with prediction
 * interval for a further reading.
 */
export function trendTowards(
  { instants, values, log = {} }: Series,
  limit: number,
  { resetFall, confidence }: { resetFall: number; confidence: number },
): LogTrend | undefined {
  const start = startOfTrend(values, resetFall)
  const last = values.length - 1
  const from = instants[start]
  const newest = instants[last]
  if (from === undefined || newest === undefined || last - start + 1 < FEWEST_FOR_TREND || !(newest > from))
    return undefined
  const days = instants.slice(start).map((at) => (at - from) / MS_PER_DAY)
  const fit = fitLine(days, values.slice(start))
  const today = days[days.length - 1]!
  const crossing = limitCrossing(fit, { value: limit, side: 'upper' }, confidence, today)
  const ahead = (x: number | undefined): number | undefined =>
    x === undefined || x - today > HORIZON_DAYS ? undefined : x - today
  const newestOn = dayOf(log, newest)
  const dateIn = (after: number | undefined): string | undefined =>
    after === undefined ? undefined : addDays(newestOn, Math.floor(after + ROUNDING_DAYS))
  const daysByLine = ahead(crossing.byLine)
  // The bound lies above the line and cannot reach the limit after it; rounding on an exact line may lose its root.
  const daysByPrediction = ahead(crossing.byPrediction ?? crossing.byLine)
  return {
    fit,
    from,
    readings: days.length,
    newestOn,
    perMonth: fit.slope * DAYS_PER_MONTH,
    daysByLine,
    daysByPrediction,
    crossesOn: dateIn(daysByLine),
    mayCrossOn: dateIn(daysByPrediction),
  }
}
