import { cumulativeSumChart, designBySigma } from '@/shared/statistics/charts/cumulative-sum'
import type { ChartPhase } from '@/shared/statistics/charts/chart'
import type { PhaseStart } from '@/shared/statistics/charts/phases'
import { estimateFromMovingRange } from '@/shared/statistics/charts/process-estimate'
import type { ChartChoice } from './chart-choice'
import type { ChartPanel, PanelSignal } from './chart-panel'
import { FEWEST_TO_CHART } from './chart-stretches'
import type { Series } from '@/shared/logs/log-series'
import { baselineFor } from './fixed-limits'

/** Shift to be found, and the sum at which the chart signals, in standard deviations of the process. */
export const CUSUM_DESIGN = { shiftSigmas: 1, intervalSigmas: 5 } as const

const WORDS = {
  high: 'high sum beyond the decision interval',
  low: 'low sum beyond the decision interval',
}

/**
 * The sums above and (drawn downwards) below the level of each stretch, in the
 * unit of the readings; the limits are the decision interval. Each stretch
 * starts at nought. A stretch without spread or with too few readings has none.
 */
export function cumulativeSumPanel(
  { instants, values, log }: Series,
  choice: ChartChoice,
  starts: readonly PhaseStart[],
): ChartPanel {
  const size = values.length
  const column = (value = Number.NaN): Float64Array => new Float64Array(size).fill(value)
  const [high, low, upper, lower] = [column(0), column(0), column(), column()]
  const signals: PanelSignal[] = []
  const phases = starts.map((start, index): ChartPhase => {
    const to = starts[index + 1]?.from ?? size
    const part = values.slice(start.from, to)
    const phase = { name: start.name, from: start.from, to }
    const none = { kind: 'estimated', pointsUsed: 0, pointsLeftOut: [] } as const
    if (part.length < FEWEST_TO_CHART) return { ...phase, limits: none }
    const baseline = baselineFor(part, start, { instants, log }, choice)
    const { centre, processSigma, pointsUsed } = estimateFromMovingRange(part, baseline)
    if (!(processSigma > 0)) return { ...phase, limits: none }
    const design = designBySigma(centre, processSigma, CUSUM_DESIGN)
    const sums = cumulativeSumChart(part, design)
    sums.high.forEach((sum, at) => (high[start.from + at] = sum))
    sums.low.forEach((sum, at) => (low[start.from + at] = -sum))
    upper.fill(design.decisionInterval, start.from, to)
    lower.fill(-design.decisionInterval, start.from, to)
    for (const { side, soundedAt } of sums.signals)
      signals.push({
        chartRule: `cumulative-sum:${side}`,
        ruleId: 'cumulative-sum',
        message: WORDS[side],
        point: start.from + soundedAt,
        line: side === 'high' ? 0 : 1,
      })
    return {
      ...phase,
      limits:
        baseline.kind === 'frozen'
          ? { kind: 'frozen', setBy: baseline.setBy }
          : { kind: 'estimated', pointsUsed, pointsLeftOut: [] },
    }
  })
  return {
    kind: 'cumulative-sum',
    instants,
    lines: [high, low],
    centre: column(0),
    lower,
    upper,
    phases,
    signals,
    rulesNotRun: [],
    asked: true,
  }
}
