import type { Baseline, KnownProcess } from '@/shared/statistics/charts/baseline'
import type { Chart, ChartKind } from '@/shared/statistics/charts/chart'
import { individualsChart } from '@/shared/statistics/charts/individuals'
import { meanAndDeviation } from '@/shared/statistics/charts/mean-and-deviation'
import { meanAndRange } from '@/shared/statistics/charts/mean-and-range'
import { movingRangeChart } from '@/shared/statistics/charts/moving-range'
import { chartInPhases, type PhaseStart } from '@/shared/statistics/charts/phases'
import { weightedAverageChart } from '@/shared/statistics/charts/weighted-average'
import { withoutLimits } from '@/shared/statistics/charts/without-limits'
import { judgeChart } from '@/shared/statistics/run-rules/judged-chart'
import type { RunRule } from '@/shared/statistics/run-rules/rule'
import type { ChartChoice } from './chart-choice'
import { FEWEST_TO_CHART, groupsOf, phaseStarts, pointsOn, type Series } from './chart-stretches'
import type { ChartPanel } from './chart-panel'
import { cumulativeSumPanel } from './cumulative-sum-panel'
import { baselineFor, held } from './fixed-limits'

/** Weight of the newest reading in the moving average: within the usual 0.2 to 0.3. */
export const NEWEST_WEIGHT = 0.2

/** The level first; the spread, where the chart has one, second. */
export interface Panels {
  readonly panels: readonly ChartPanel[]
  /** Readings that made up no whole subgroup. */
  readonly leftOut: number
}

/**
 * Charts a series as chosen: each stretch with limits of its own, estimated from
 * its readings or from those of the baseline days and then held. Sources: as
 * named at each chart. A stretch of fewer than eight readings has no limits.
 * `askedOnly` leaves out the panel that nobody has to answer for.
 */
export function panelsOf(
  series: Series,
  choice: ChartChoice,
  rules: readonly RunRule[],
  askedOnly = false,
): Panels {
  if (choice.chart === 'mean-range' || choice.chart === 'mean-deviation')
    return subgroupPanels(series, choice, rules)
  const { instants, values } = series
  const starts = phaseStarts(instants, choice.phases)
  if (choice.chart === 'cumulative-sum')
    return { panels: [cumulativeSumPanel(series, choice, starts)], leftOut: 0 }
  const inPhases = (kind: ChartKind, build: Build<number>): Chart =>
    chartInPhases(values, starts, (part, start) =>
      part.length < FEWEST_TO_CHART
        ? withoutLimits(kind, kind === 'moving-range' ? steps(part) : part)
        : build(part, baselineFor(part, start, instants, choice)),
    )
  const panel = (chart: Chart, asked = true): ChartPanel => panelFrom(chart, instants, rules, asked)
  if (choice.chart === 'weighted-average') {
    const average = inPhases('weighted-average', (part, baseline) =>
      weightedAverageChart(part, { weight: NEWEST_WEIGHT, limits: 'time-varying', baseline }),
    )
    return { panels: [panel(average)], leftOut: 0 }
  }
  return {
    panels: [
      panel(inPhases('individuals', individualsChart)),
      ...(askedOnly ? [] : [panel(inPhases('moving-range', movingRangeChart), false)]),
    ],
    leftOut: 0,
  }
}

type Build<Item> = (part: readonly Item[], baseline: Baseline<KnownProcess>) => Chart

function subgroupPanels(series: Series, choice: ChartChoice, rules: readonly RunRule[]): Panels {
  const { instants, groups, leftOut } = groupsOf(series, choice)
  const [chartOf, kind] =
    choice.chart === 'mean-range'
      ? ([meanAndRange, 'range'] as const)
      : ([meanAndDeviation, 'deviation'] as const)
  if (groups.length === 0) return { panels: [], leftOut }
  const fewest = Math.max(2, Math.ceil(FEWEST_TO_CHART / choice.subgroup))
  const starts = phaseStarts(instants, choice.phases)
  const baselineOf = (part: typeof groups, start: PhaseStart): Baseline<KnownProcess> => {
    if (!choice.baseline) return { kind: 'estimated' }
    const days = pointsOn(instants.slice(start.from, start.from + part.length), choice.baseline)
    if (days.to - days.from < fewest) return { kind: 'estimated' }
    const { process } = chartOf(part, { kind: 'estimated', ...days })
    return held(process, `${days.to - days.from} subgroups`, choice.baseline)
  }
  const drawn = (which: 'means' | 'spreads'): Chart =>
    chartInPhases(groups, starts, (part, start) => {
      if (part.length >= fewest) return chartOf(part, baselineOf(part, start))[which]
      // Any limits will do: only the points are kept.
      const points = chartOf(part, { kind: 'frozen', setBy: '', centre: 0, processSigma: 1 })[which].values
      return withoutLimits(which === 'means' ? 'mean' : kind, points)
    })
  return {
    panels: (['means', 'spreads'] as const).map((which) => panelFrom(drawn(which), instants, rules, true)),
    leftOut,
  }
}

const steps = (values: readonly number[]): number[] =>
  values.slice(1).map((value, index) => Math.abs(value - values[index]!))

function panelFrom(
  chart: Chart,
  instants: readonly number[],
  rules: readonly RunRule[],
  asked: boolean,
): ChartPanel {
  const behaved = { ...chart, behaviour: BEHAVIOUR[chart.kind] ?? chart.behaviour }
  const { signals, rulesSetAside } = judgeChart(behaved, rules)
  const words = new Map(rules.map(({ id, says }) => [id, says]))
  const { kind, values, centre, lower, upper, phases, positions } = chart
  return {
    kind,
    instants:
      positions.length === instants.length
        ? instants
        : Array.from(positions, (position) => instants[position]!),
    lines: [values],
    centre,
    lower,
    upper,
    phases,
    signals: signals.map(({ ruleId, soundedAt }) => ({
      chartRule: kind === 'individuals' ? ruleId : `${kind}:${ruleId}`,
      ruleId,
      says: words.get(ruleId) ?? ruleId,
      point: soundedAt,
      line: 0,
    })),
    rulesSetAside,
    asked,
  }
}

/** A first stretch too short for limits must not decide which rules suit the chart. */
const BEHAVIOUR: Partial<Record<ChartKind, Chart['behaviour']>> = {
  'moving-range': 'correlated',
  'weighted-average': 'correlated',
  range: 'skewed',
  deviation: 'skewed',
}
