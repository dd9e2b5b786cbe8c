import type { Log } from '@/shared/records/log'
import { LEVEL_CHARACTERISTICS } from '@/shared/logs/level-characteristics'
import { memo } from '@/shared/memo'
import { answerTo } from '@/shared/logs/signal-answers'
import type { Facts } from '@/shared/rules/facts'
import { chartedInputs, chartedSeries } from '@/shared/logs/charted-series'
import { askedSignals, specifiedCharting } from './log-chart'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/** A log whose chart, as specified, gave signals that nobody has answered yet. */
export interface OpenLogSignals {
  readonly log: Log
  readonly open: number
}

/** The logs with unanswered signals, in the order of their characteristics. */
export const openLogSignals = memo((facts: Facts): readonly OpenLogSignals[] => {
  const answers = recordsOfKind(facts.records, 'signal-answer')
  const inputs = chartedInputs(facts)
  return LEVEL_CHARACTERISTICS.flatMap((key) => facts.records.logs.get(key) ?? []).flatMap((log) => {
    const series = chartedSeries(log, inputs)?.series
    if (!series) return []
    const open = askedSignals(series, specifiedCharting(log, facts)).filter(
      ({ chartRule, instant }) => !answerTo(answers, { log: log.code, chartRule, instant }),
    ).length
    return open > 0 ? [{ log, open }] : []
  })
}, 1)
