import type { Numbers } from '@/app/drawing/numbers-table'
import { TrendPlot } from '@/app/drawing/trend-plot'
import { Day } from '@/app/ui/date'
import { instantOf, MS_PER_DAY } from '@/shared/quantity/calendar'
import { formatQuantity } from '@/shared/quantity/format'
import type { Log } from '@/shared/records/log'
import type { ConstituentOutlook } from '@/shared/baths/bath-outlook'
import type { LogTrend } from '@/shared/logs/log-trend'
import { predictAt } from '@/shared/statistics/regression/prediction'

/** A line drawn further ahead than this would squeeze the analyses into a corner. */
const FURTHEST_DAYS = 730
const PLACES = 48

interface ConstituentPlotProps {
  log: Log
  name: string
  outlook: ConstituentOutlook
  /** Of the trend's bounds, one-sided, between 0 and 1. */
  confidence: number
}

/** One constituent over time, its line and prediction up to the limit. */
export function ConstituentPlot({ log, name, outlook, confidence }: ConstituentPlotProps) {
  const { question, limitPct, trend } = outlook
  const { instants, values } = question.series
  const line = trend ? lineOf(trend, confidence) : []
  const last = line[line.length - 1]?.at ?? 0
  const uprights = [
    ...(trend?.mayCrossOn
      ? [{ at: instantOf(trend.mayCrossOn), name: `may reach it ${trend.mayCrossOn}` }]
      : []),
    ...(trend?.crossesOn ? [{ at: instantOf(trend.crossesOn), name: `by the line ${trend.crossesOn}` }] : []),
  ].filter(({ at }) => at <= last)
  const numbers: Numbers = {
    columns: [
      { label: 'Day' },
      { label: 'Analysed' },
      { label: 'Line' },
      { label: 'Lower' },
      { label: 'Upper' },
    ],
    rows: instants.map((at, index) => {
      const on = line.length > 0 && trend && at >= trend.from ? predicted(trend, at, confidence) : undefined
      return [
        <Day key={at} at={new Date(at)} />,
        formatQuantity(values[index]!, '%'),
        on ? formatQuantity(on.value, '%') : '–',
        on ? formatQuantity(on.lower, '%') : '–',
        on ? formatQuantity(on.upper, '%') : '–',
      ]
    }),
  }
  return (
    <TrendPlot
      title={`${log.code}: ${name}`}
      description={`${values.length} analyses of ${name}, limit ${formatQuantity(limitPct, '%')}.`}
      up={{ label: 'Share by mass', unit: '%' }}
      readings={instants.map((at, index) => ({ at, value: values[index]! }))}
      {...(trend && { fittedFrom: trend.from })}
      line={line}
      atMost={limitPct}
      uprights={uprights}
      numbers={numbers}
    />
  )
}

/** From the first analysis of the trend to a little past the later crossing, or as far again where there is none. */
function lineOf(
  trend: LogTrend,
  confidence: number,
): { at: number; value: number; lower: number; upper: number }[] {
  const { fit, from, daysByLine, daysByPrediction } = trend
  const spanDays = fit.lastX - fit.firstX
  const aheadDays = Math.min(FURTHEST_DAYS, (daysByLine ?? daysByPrediction ?? spanDays) * 1.1)
  const step = (spanDays + aheadDays) / PLACES
  return Array.from({ length: PLACES + 1 }, (_, index) =>
    predicted(trend, from + index * step * MS_PER_DAY, confidence),
  )
}

/** The bounds are each one-sided at the confidence of the trend. */
function predicted({ fit, from }: LogTrend, at: number, confidence: number) {
  const { value, predictionInterval } = predictAt(fit, (at - from) / MS_PER_DAY, 2 * confidence - 1)
  return { at, value, ...predictionInterval }
}
