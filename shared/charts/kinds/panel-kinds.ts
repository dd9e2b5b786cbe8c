import type { PointBehaviour } from '@/shared/statistics/charts/chart'

/** What one plot of a log's chart shows, and how it is read. */
export interface PanelKind {
  /** As its axis is called; `label` is what is charted. */
  plotted(label: string, subgroup: number): string
  /** Put before what a signal says, where the chart has another plot that it could be of. */
  readonly signalPrefix: string
  /** Of its points while nothing is wrong, which decides on the run rules: a stretch too short for limits must not. */
  readonly behaviour: PointBehaviour
  /** Whether run rules find its signals, of which the specification asks for some; else its own limits do, and all are asked. */
  readonly byRunRules: boolean
  /** What the lines beside the points are. */
  readonly limits: 'control limits' | 'decision interval'
  /** Whether a point is a reading, so that the window of readings is its limit too. */
  readonly ofReadings: boolean
  /** Whether it shows the spread rather than the level: drawn low, and from zero. */
  readonly ofSpread: boolean
}

const LEVEL = {
  signalPrefix: '',
  behaviour: 'near-normal',
  byRunRules: true,
  limits: 'control limits',
  ofReadings: false,
  ofSpread: false,
} as const
const SPREAD = { ...LEVEL, behaviour: 'skewed', ofSpread: true } as const

/** Every plot that a log's chart is made of. */
export const PANEL_KINDS = {
  individuals: { ...LEVEL, plotted: (label) => label, ofReadings: true },
  'moving-range': {
    ...SPREAD,
    plotted: () => 'Moving range',
    signalPrefix: 'moving range: ',
    behaviour: 'correlated',
  },
  mean: { ...LEVEL, plotted: (label, subgroup) => `${label}, mean of ${subgroup}` },
  range: { ...SPREAD, plotted: (_label, subgroup) => `Range of ${subgroup}`, signalPrefix: 'range: ' },
  deviation: {
    ...SPREAD,
    plotted: (_label, subgroup) => `Standard deviation of ${subgroup}`,
    signalPrefix: 'standard deviation: ',
  },
  'weighted-average': {
    ...LEVEL,
    plotted: (label) => `${label}, weighted average`,
    behaviour: 'correlated',
  },
  'cumulative-sum': {
    ...LEVEL,
    plotted: (label) => `${label}, sums of deviations`,
    behaviour: 'correlated',
    byRunRules: false,
    limits: 'decision interval',
  },
} as const satisfies Record<string, PanelKind>
export type PanelKindKey = keyof typeof PANEL_KINDS
