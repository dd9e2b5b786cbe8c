import type { Log } from '@/shared/records/log'
import { answerTo, OUTSIDE_WINDOW } from '@/shared/logs/signal-answers'
import { chartedSeries } from '@/shared/logs/charted-series'
import { chartedInputs } from '@/shared/logs/charted-series'
import { windowOfLog } from '@/shared/logs/log-window'
import { excursionsFrom } from '@/shared/logs/logged-window'
import type { Facts } from '@/shared/rules/facts'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/** A stretch of readings outside the window that nobody has answered yet, by its first reading. */
export interface OpenExcursion {
  readonly instant: number
  readonly readings: number
  readonly value: number
}

/** Every stretch outside the window without an answer, oldest first. */
export function openExcursions(log: Log, facts: Facts): OpenExcursion[] {
  const series = chartedSeries(log, chartedInputs(facts))?.series
  const window = windowOfLog(log.characteristic, facts)
  if (!series || !window) return []
  const answers = recordsOfKind(facts.records, 'signal-answer')
  return excursionsFrom(series.values, window).flatMap(({ first, last }) => {
    const [instant, value] = [series.instants[first], series.values[first]]
    if (instant === undefined || value === undefined) return []
    const answered = answerTo(answers, { log: log.code, chartRule: OUTSIDE_WINDOW, instant })
    return answered ? [] : [{ instant, value, readings: last - first + 1 }]
  })
}
