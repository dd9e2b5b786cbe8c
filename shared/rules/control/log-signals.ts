import type { Characteristic } from '@/shared/records/characteristic'
import type { Log } from '@/shared/records/log'
import { columnSeries } from '@/shared/records/log-series'
import { individualsChart } from '@/shared/statistics/charts/individuals'
import { WESTERN_ELECTRIC_1956 } from '@/shared/statistics/run-rules/western-electric'
import { judgeChart, type JudgedChart } from '@/shared/statistics/run-rules/judged-chart'

/** Fewer readings give no limits worth drawing. */
export const FEWEST_TO_CHART = 8

/** A log's charted readings with their times, and the chart over them when there are enough. */
export interface ChartedLog {
  readonly readings: readonly { readonly at: number; readonly value: number }[]
  readonly chart: JudgedChart | undefined
}

const known = new WeakMap<object, ChartedLog>()

/** The individuals chart of a log, under the zone rules of the Western Electric handbook (1956). */
export function chartLog(log: Log, characteristic: Characteristic): ChartedLog {
  const before = known.get(log.readings)
  if (before) return before
  const { instants, values } = columnSeries(log, characteristic.charted)
  const readings = values.map((value, index) => ({ at: instants[index]!, value }))
  const chart = canBeCharted(values) ? judgeChart(individualsChart(values), WESTERN_ELECTRIC_1956) : undefined
  const charted = { readings, chart }
  known.set(log.readings, charted)
  return charted
}

/** Enough readings, and not all alike. */
export const canBeCharted = (values: readonly number[]): boolean =>
  values.length >= FEWEST_TO_CHART && values.some((value) => value !== values[0])

const beyond = new WeakMap<object, readonly number[]>()

/**
 * The readings (by place in the charted series) that sound the rule of the
 * limits on the same chart: a fraction of the work of all zone rules.
 */
export function beyondLimits(log: Log, characteristic: Characteristic): readonly number[] {
  const before = beyond.get(log.readings)
  if (before) return before
  const { values } = columnSeries(log, characteristic.charted)
  const sounded = canBeCharted(values)
    ? judgeChart(individualsChart(values), [WESTERN_ELECTRIC_1956[0]]).signals.map(
        ({ soundedAt }) => soundedAt,
      )
    : []
  beyond.set(log.readings, sounded)
  return sounded
}
