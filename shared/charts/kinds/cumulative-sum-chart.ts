import { phaseStarts } from '../chart-stretches'
import { CUSUM_DESIGN, cumulativeSumPanel } from '../cumulative-sum-panel'
import type { LogChartKind } from './log-chart-kind'

/** The sums of what lies above and below the level; they signal by their decision interval, and no run rule is asked. */
export const CUMULATIVE_SUM: LogChartKind = {
  ofSubgroups: false,
  formula: `sums of what exceeds the level by more than ${CUSUM_DESIGN.shiftSigmas / 2} σ; signal above ${CUSUM_DESIGN.intervalSigmas} σ`,
  source: { cite: 'NIST/SEMATECH e-Handbook 6.3.2.3: CUSUM control charts', how: 'published' },
  panels: (series, choice) => ({
    panels: [cumulativeSumPanel(series, choice, phaseStarts(series, choice.phases))],
    leftOut: 0,
  }),
}
