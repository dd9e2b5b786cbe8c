import type { ChosenChart } from '../chart-choice'
import { CUMULATIVE_SUM } from './cumulative-sum-chart'
import { INDIVIDUALS } from './individuals-chart'
import type { LogChartKind } from './log-chart-kind'
import { MEAN_DEVIATION, MEAN_RANGE } from './mean-charts'
import { WEIGHTED_AVERAGE } from './weighted-average-chart'

/** Every chart that a specification or an address can ask for. */
export const LOG_CHARTS: Readonly<Record<ChosenChart, LogChartKind>> = {
  individuals: INDIVIDUALS,
  'mean-range': MEAN_RANGE,
  'mean-deviation': MEAN_DEVIATION,
  'weighted-average': WEIGHTED_AVERAGE,
  'cumulative-sum': CUMULATIVE_SUM,
}
