import { findCharacteristic } from '@/shared/records/characteristics'
import type { Log } from '@/shared/records/log'
import type { Facts } from '@/shared/rules/facts'
import type { JudgedChart } from '@/shared/statistics/run-rules/judged-chart'
import { WESTERN_ELECTRIC_1956 } from '@/shared/statistics/run-rules/western-electric'
import { chartLog } from './log-signals'
import type { ProcessWindow } from './logged-window'
import { windowOfLog } from './log-window'

/** A signal of a log's chart, told by the reading that completed the pattern. */
export interface LogSignal {
  readonly chartRule: string
  readonly says: string
  /** Epoch milliseconds, and its text as an answer names it. */
  readonly instant: number
  readonly readingAt: string
  readonly value: number
}

/** All that a screen draws of one log. */
export interface LogChart {
  readonly readings: readonly { readonly at: number; readonly value: number }[]
  /** Undefined while there are too few readings, or they are all alike. */
  readonly chart: JudgedChart | undefined
  readonly signals: readonly LogSignal[]
  readonly window: ProcessWindow | undefined
}

/** An instant as an answer names it: 2026-03-31T07:40:00Z. */
export const readingText = (instant: number): string => new Date(instant).toISOString().replace('.000Z', 'Z')

const WORDS: ReadonlyMap<string, string> = new Map(WESTERN_ELECTRIC_1956.map(({ id, says }) => [id, says]))

/**
 * The chart of a log with its signals and, when the programme's facts are
 * given, the specified window in the unit of the charted column.
 * Throws RangeError on a characteristic that is not known.
 */
export function logChart(log: Log, facts?: Facts): LogChart {
  const characteristic = findCharacteristic(log.characteristic)
  if (!characteristic) throw new RangeError(`There is no process characteristic ${log.characteristic}.`)
  const { readings, chart } = chartLog(log, characteristic)
  const signals = (chart?.signals ?? []).flatMap(({ ruleId, soundedAt }) => {
    const reading = readings[soundedAt]
    if (!reading) return []
    const readingAt = readingText(reading.at)
    return [
      {
        chartRule: ruleId,
        says: WORDS.get(ruleId) ?? ruleId,
        instant: reading.at,
        readingAt,
        value: reading.value,
      },
    ]
  })
  return { readings, chart, signals, window: facts && windowOfLog(log.characteristic, facts) }
}
