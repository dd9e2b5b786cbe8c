import type { RunRule } from '@/shared/statistics/run-rules/rule'
import type { ChartChoice } from './chart-choice'
import type { Series } from '@/shared/logs/log-series'
import type { Panels } from './kinds/log-chart-kind'
import { LOG_CHARTS } from './kinds/log-charts'

/**
 * Charts a series as chosen: each stretch with limits of its own, estimated from
 * its readings or from those of the baseline days and then held. Sources: as
 * named at each chart. A stretch of fewer than eight readings has no limits.
 * `askedOnly` leaves out the panel that nobody has to answer for.
 */
export const panelsOf = (
  series: Series,
  choice: ChartChoice,
  rules: readonly RunRule[],
  askedOnly = false,
): Panels => LOG_CHARTS[choice.chart].panels(series, choice, rules, askedOnly)
