import type { Characteristic } from '@/shared/records/characteristic'
import type { Log } from '@/shared/records/log'
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
  const at = (log.readings.columns['at'] ?? []) as readonly number[]
  const cells = log.readings.columns[characteristic.charted] ?? []
  const readings = at.flatMap((time, index) => {
    const value = cells[index]
    return typeof value === 'number' ? [{ at: time, value }] : []
  })
  const values = readings.map(({ value }) => value)
  const varies = values.some((value) => value !== values[0])
  const chart =
    values.length >= FEWEST_TO_CHART && varies
      ? judgeChart(individualsChart(values), WESTERN_ELECTRIC_1956)
      : undefined
  const charted = { readings, chart }
  known.set(log.readings, charted)
  return charted
}
