import { CHART_OPTIONS, GROUPING_OPTIONS } from '@/shared/plan/parameters/control-charts'
import type { Source } from '@/shared/sources/source'
import type { ChartPhase } from '@/shared/statistics/charts/chart'
import { isOfSubgroups, type ChartChoice, type ChosenChart } from './chart-choice'
import type { ChartPanel } from './chart-panel'
import { NEWEST_WEIGHT } from './chart-panels'
import { CUSUM_DESIGN } from './cumulative-sum-panel'

/** How each chart comes to its limits, and where that is written. */
export const CHART_FORMULAS = {
  individuals: {
    formula: 'mean ± 3 · mean moving range / 1.128',
    source: {
      cite: 'NIST/SEMATECH e-Handbook 6.3.2.2: individuals control charts',
      how: 'published',
    },
  },
  'mean-range': {
    formula: 'mean of means ± A2 · mean range; range: D3, D4 · mean range',
    source: { cite: 'NIST/SEMATECH e-Handbook 6.3.2.1: X̄ and R charts', how: 'published' },
  },
  'mean-deviation': {
    formula: 'mean of means ± A3 · mean s; s: B3, B4 · mean s',
    source: { cite: 'NIST/SEMATECH e-Handbook 6.3.2.1: X̄ and S charts', how: 'published' },
  },
  'weighted-average': {
    formula: `z = ${NEWEST_WEIGHT} · x + ${1 - NEWEST_WEIGHT} · z before; mean ± 3 σ √(${NEWEST_WEIGHT} / ${2 - NEWEST_WEIGHT} · (1 − ${1 - NEWEST_WEIGHT}²ⁱ))`,
    source: { cite: 'NIST/SEMATECH e-Handbook 6.3.2.4: EWMA control charts', how: 'published' },
  },
  'cumulative-sum': {
    formula: `sums of what exceeds the level by more than ${CUSUM_DESIGN.shiftSigmas / 2} σ; signal above ${CUSUM_DESIGN.intervalSigmas} σ`,
    source: { cite: 'NIST/SEMATECH e-Handbook 6.3.2.3: CUSUM control charts', how: 'published' },
  },
} as const satisfies Record<ChosenChart, { formula: string; source: Source }>

const labelIn = (options: readonly { value: string; label: string }[], value: string): string =>
  options.find((option) => option.value === value)?.label ?? value

/** The words with a small first letter; X̄–R and UTC stay as they are. */
export const withinASentence = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1)

/** "Means and ranges of subgroups (X̄–R): 5 readings, so many in a row". */
export function chartInWords(choice: ChartChoice): string {
  const chart = labelIn(CHART_OPTIONS, choice.chart)
  if (!isOfSubgroups(choice)) return chart
  return `${chart}: ${choice.subgroup} readings a subgroup, ${withinASentence(labelIn(GROUPING_OPTIONS, choice.grouping))}`
}

/** Where the limits of a stretch come from: estimated from these very points, or held since. */
export function limitsInWords({ limits, from, to }: ChartPhase): string {
  if (limits.kind === 'frozen') return `held, from ${limits.setBy}`
  if (limits.pointsUsed === 0) return `none yet: ${to - from} points are too few`
  return `estimated from these ${limits.pointsUsed} points`
}

/** What a panel plots, as its axis is called. */
export const plotted = (kind: ChartPanel['kind'], label: string, { subgroup }: ChartChoice): string => {
  switch (kind) {
    case 'moving-range':
      return 'Moving range'
    case 'mean':
      return `${label}, mean of ${subgroup}`
    case 'range':
      return `Range of ${subgroup}`
    case 'deviation':
      return `Standard deviation of ${subgroup}`
    case 'weighted-average':
      return `${label}, weighted average`
    case 'cumulative-sum':
      return `${label}, sums of deviations`
    default:
      return label
  }
}
