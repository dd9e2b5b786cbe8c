import { individualsChart } from '@/shared/statistics/charts/individuals'
import { movingRangeChart } from '@/shared/statistics/charts/moving-range'
import { chartOfReadings, type ReadingsDrawing } from './chart-of-readings'
import type { LogChartKind } from './log-chart-kind'
import { panelOfChart } from './panel-of-chart'

const READINGS: ReadingsDrawing = { kind: 'individuals', draw: individualsChart, points: (part) => part }
const STEPS: ReadingsDrawing = {
  kind: 'moving-range',
  draw: movingRangeChart,
  points: (part) => part.slice(1).map((value, index) => Math.abs(value - part[index]!)),
}

/** Every reading, and beneath it the step from the one before; a signal of a step only repeats what its readings say. */
export const INDIVIDUALS: LogChartKind = {
  ofSubgroups: false,
  formula: 'mean ± 3 · mean moving range / 1.128',
  source: {
    cite: 'NIST/SEMATECH e-Handbook 6.3.2.2: individuals control charts',
    how: 'published',
  },
  panels(series, choice, rules, askedOnly) {
    const panel = (drawing: ReadingsDrawing) => chartOfReadings(series, choice, drawing)
    const level = panelOfChart('individuals', panel(READINGS), series.instants, rules)
    if (askedOnly) return { panels: [level], leftOut: 0 }
    const spread = panelOfChart('moving-range', panel(STEPS), series.instants, rules, false)
    return { panels: [level, spread], leftOut: 0 }
  },
}
