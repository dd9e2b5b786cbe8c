import { requireReadings, type Readings } from '@/shared/statistics/reading-checks'
import { mean } from '@/shared/statistics/sample-moments'
import { baselinePoints, ESTIMATE_FROM_ALL, knownProcess, valuesAt } from './baseline'
import type { Baseline, KnownProcess } from './baseline'
import { chartConstants } from './constants'

const { d2 } = chartConstants(2)

export type ProcessEstimate = KnownProcess & { pointsUsed: number }

/**
 * Mean and standard deviation of a process from single readings in order:
 * σ = mean moving range ÷ d2. Readings left out break the chain of ranges.
 * Source: NIST/SEMATECH e-Handbook 6.3.2.2.
 */
export function estimateFromMovingRange(
  values: Readings,
  baseline: Baseline<KnownProcess> = ESTIMATE_FROM_ALL,
): ProcessEstimate {
  requireReadings(values, 'readings')
  if (baseline.kind === 'frozen') return { ...knownProcess(baseline), pointsUsed: 0 }
  const used = baselinePoints(values.length, baseline)
  let ranges = 0
  let sum = 0
  for (let step = 1; step < used.length; step++) {
    if (used[step] !== used[step - 1]! + 1) continue
    sum += Math.abs(values[used[step]!]! - values[used[step - 1]!]!)
    ranges++
  }
  if (ranges === 0) throw new RangeError('A moving range needs two readings that follow one another.')
  return {
    centre: mean(valuesAt(used, values)),
    processSigma: sum / ranges / d2,
    pointsUsed: used.length,
  }
}
