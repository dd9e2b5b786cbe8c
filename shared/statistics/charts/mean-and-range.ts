import { range } from '@/shared/statistics/sample-moments'
import { ESTIMATE_FROM_ALL } from './baseline'
import type { Baseline, KnownProcess } from './baseline'
import { chartConstants } from './constants'
import { subgroupCharts } from './subgroups'
import type { SubgroupCharts, Subgroups } from './subgroups'

/**
 * X̄ and R charts of subgroups of equal size, 2 to 25 readings; σ = mean range ÷ d2.
 * Units: those of the readings. Source: NIST/SEMATECH e-Handbook 6.3.2.1.
 */
export function meanAndRange(
  subgroups: Subgroups,
  baseline: Baseline<KnownProcess> = ESTIMATE_FROM_ALL,
): SubgroupCharts {
  const { d2, d3 } = chartConstants(subgroups[0]?.length ?? 0)
  return subgroupCharts(
    subgroups,
    { kind: 'range', of: range, meanPerSigma: d2, deviationPerSigma: d3 },
    baseline,
  )
}
