import { requireEqualRows } from '@/shared/statistics/reading-checks'
import { mean } from '@/shared/statistics/sample-moments'
import { baselinePoints, knownProcess, limitsOrigin, valuesAt } from './baseline'
import type { Baseline, KnownProcess } from './baseline'
import type { Chart, LimitsOrigin } from './chart'
import { drawLimits } from './draw-limits'

export type Subgroups = readonly (readonly number[])[]

type Spread = {
  kind: 'range' | 'deviation'
  of: (subgroup: readonly number[]) => number
  /** Mean of the spread statistic, and its standard deviation, ÷ process σ. */
  meanPerSigma: number
  deviationPerSigma: number
}

export type SubgroupCharts = { means: Chart; spreads: Chart; process: KnownProcess }

/** The pair of charts that rational subgroups of equal size give, for either measure of spread. */
export function subgroupCharts(
  subgroups: Subgroups,
  spread: Spread,
  baseline: Baseline<KnownProcess>,
): SubgroupCharts {
  requireEqualRows(subgroups, 'subgroups', 2)
  const size = subgroups[0]!.length
  const spreads = subgroups.map(spread.of)
  const means = subgroups.map(mean)
  const { process, limits } = settle(means, spreads, spread.meanPerSigma, baseline)
  return {
    process,
    means: drawLimits({
      kind: 'mean',
      behaviour: 'near-normal',
      values: means,
      centre: process.centre,
      sigma: process.processSigma / Math.sqrt(size),
      limits,
    }),
    spreads: drawLimits({
      kind: spread.kind,
      behaviour: 'skewed',
      values: spreads,
      centre: spread.meanPerSigma * process.processSigma,
      sigma: spread.deviationPerSigma * process.processSigma,
      floor: 0,
      limits,
    }),
  }
}

function settle(
  means: readonly number[],
  spreads: readonly number[],
  meanPerSigma: number,
  baseline: Baseline<KnownProcess>,
): { process: KnownProcess; limits: LimitsOrigin } {
  if (baseline.kind === 'frozen')
    return { process: knownProcess(baseline), limits: limitsOrigin(baseline, 0) }
  const used = baselinePoints(means.length, baseline)
  return {
    process: {
      centre: mean(valuesAt(used, means)),
      processSigma: mean(valuesAt(used, spreads)) / meanPerSigma,
    },
    limits: limitsOrigin(baseline, used.length),
  }
}
