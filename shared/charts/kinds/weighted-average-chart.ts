import { weightedAverageChart } from '@/shared/statistics/charts/weighted-average'
import { chartOfReadings } from './chart-of-readings'
import type { LogChartKind } from './log-chart-kind'
import { panelOfChart } from './panel-of-chart'

/** Weight of the newest reading: within the usual 0.2 to 0.3. */
const NEWEST = 0.2

/** The moving average that takes a fifth of each new reading. */
export const WEIGHTED_AVERAGE: LogChartKind = {
  ofSubgroups: false,
  formula: `z = ${NEWEST} · x + ${1 - NEWEST} · z before; mean ± 3 σ √(${NEWEST} / ${2 - NEWEST} · (1 − ${1 - NEWEST}²ⁱ))`,
  source: { cite: 'NIST/SEMATECH e-Handbook 6.3.2.4: EWMA control charts', how: 'published' },
  panels(series, choice, rules) {
    const chart = chartOfReadings(series, choice, {
      kind: 'weighted-average',
      draw: (part, baseline) =>
        weightedAverageChart(part, { weight: NEWEST, limits: 'time-varying', baseline }),
      points: (part) => part,
    })
    return { panels: [panelOfChart('weighted-average', chart, series.instants, rules)], leftOut: 0 }
  },
}
