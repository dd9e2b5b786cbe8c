import { standardDeviation } from '@/shared/statistics/sample-moments'
import { ESTIMATE_FROM_ALL } from './baseline'
import type { Baseline, KnownProcess } from './baseline'
import { chartConstants } from './constants'
import { subgroupCharts } from './subgroups'
import type { SubgroupCharts, Subgroups } from './subgroups'

/**
 * X̄ and S charts of subgroups of equal size, 2 to 25 readings; σ = mean s ÷ c4.
 * Units: those of the readings. Source: NIST/SEMATECH e-Handbook 6.3.2.1.
 */
export function meanAndDeviation(
  subgroups: Subgroups,
  baseline: Baseline<KnownProcess> = ESTIMATE_FROM_ALL,
): SubgroupCharts {
  const { c4 } = chartConstants(subgroups[0]?.length ?? 0)
  return subgroupCharts(
    subgroups,
    {
      kind: 'deviation',
      of: standardDeviation,
      meanPerSigma: c4,
      deviationPerSigma: Math.sqrt(1 - c4 * c4),
    },
    baseline,
  )
}
