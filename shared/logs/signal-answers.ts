import type { RecordOf } from '@/shared/records/record-kinds'
import { memo } from '@/shared/memo'

export type SignalAnswer = RecordOf<'signal-answer'>

/** The rule name under which a reading outside its process window is answered. */
export const OUTSIDE_WINDOW = 'outside-window'

/**
 * The answer to a signal, if one was recorded: by log, chart rule and the
 * instant (epoch milliseconds) of the reading that completed the pattern.
 */
export function answerTo(
  answers: readonly SignalAnswer[],
  signal: { log: string; chartRule: string; instant: number },
): SignalAnswer | undefined {
  return indexOf(answers).get(keyOf(signal.log, signal.chartRule, signal.instant))
}

const keyOf = (log: string, chartRule: string, instant: number): string => `${log}\n${chartRule}\n${instant}`

/** Looked up by instant, so that '07:40Z' and '07:40:00.000Z' answer the same reading. */
const indexOf = memo(
  (answers: readonly SignalAnswer[]): ReadonlyMap<string, SignalAnswer> =>
    new Map(
      answers.map((answer) => [keyOf(answer.log, answer.chartRule, Date.parse(answer.readingAt)), answer]),
    ),
)
