import { meanAndDeviation } from '@/shared/statistics/charts/mean-and-deviation'
import { meanAndRange } from '@/shared/statistics/charts/mean-and-range'
import type { LogChartKind } from './log-chart-kind'
import { subgroupPanels } from './subgroup-panels'

/** Means and ranges of subgroups. */
export const MEAN_RANGE: LogChartKind = {
  ofSubgroups: true,
  formula: 'mean of means ± A2 · mean range; range: D3, D4 · mean range',
  source: { cite: 'NIST/SEMATECH e-Handbook 6.3.2.1: X̄ and R charts', how: 'published' },
  panels: (series, choice, rules) => subgroupPanels('range', meanAndRange, series, choice, rules),
}

/** Means and standard deviations of subgroups. */
export const MEAN_DEVIATION: LogChartKind = {
  ofSubgroups: true,
  formula: 'mean of means ± A3 · mean s; s: B3, B4 · mean s',
  source: { cite: 'NIST/SEMATECH e-Handbook 6.3.2.1: X̄ and S charts', how: 'published' },
  panels: (series, choice, rules) => subgroupPanels('deviation', meanAndDeviation, series, choice, rules),
}
