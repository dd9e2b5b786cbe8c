import type { Log } from '@/shared/records/log'
import { answerTo, OUTSIDE_WINDOW, type SignalAnswer } from '@/shared/logs/signal-answers'
import { chartedInputs, chartedSeries } from '@/shared/logs/charted-series'
import { windowOfLog } from '@/shared/logs/log-window'
import { excursionsFrom } from '@/shared/logs/logged-window'
import type { Facts } from '@/shared/rules/facts'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/** A stretch of readings outside the window, by its first reading, with what was answered to it. */
export interface Excursion {
  readonly instant: number
  readonly readings: number
  readonly value: number
  readonly answer: SignalAnswer | undefined
}

/** Every stretch outside the window that the specification sets, oldest first. */
export function excursionsOf(log: Log, facts: Facts): Excursion[] {
  const series = chartedSeries(log, chartedInputs(facts))?.series
  const window = windowOfLog(log.characteristic, facts)
  if (!series || !window) return []
  const answers = recordsOfKind(facts.records, 'signal-answer')
  return excursionsFrom(series.values, window).flatMap(({ first, last }) => {
    const [instant, value] = [series.instants[first], series.values[first]]
    if (instant === undefined || value === undefined) return []
    const answer = answerTo(answers, { log: log.code, chartRule: OUTSIDE_WINDOW, instant })
    return [{ instant, value, readings: last - first + 1, answer }]
  })
}

/** Those that nobody has answered yet. */
export const openExcursions = (log: Log, facts: Facts): Excursion[] =>
  excursionsOf(log, facts).filter(({ answer }) => !answer)
