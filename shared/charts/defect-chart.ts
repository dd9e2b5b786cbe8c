import type {
  DefectChartKey,
  DefectChartPhaseRow,
  DefectChartRow,
} from '@/shared/plan/parameters/defect-charts'
import type { DefectSample } from './defect-samples'
import type { Inspection } from '@/shared/records/inspection'
import { FEWEST_TO_CHART } from './chart-stretches'
import { held } from './fixed-limits'
import type { Baseline, KnownLevel } from '@/shared/statistics/charts/baseline'
import { chartInPhases, type PhaseStart } from '@/shared/statistics/charts/phases'
import { withoutLimits } from '@/shared/statistics/charts/without-limits'
import { judgeChart, type JudgedChart } from '@/shared/statistics/run-rules/judged-chart'
import type { RunRule } from '@/shared/statistics/run-rules/rule'
import { DEFECT_CHARTS, type DefectChartKind } from './defect-chart-kinds'

/** Days, both included. */
export interface Days {
  readonly from: string
  readonly to: string
}

/** Which chart of defects is drawn, with limits from where, and where it starts afresh. */
export interface DefectChartChoice {
  readonly chart: DefectChartKey
  /** Days whose samples set the limits that are held afterwards. */
  readonly baseline?: Days
  /** Resets, the earliest first. */
  readonly phases: readonly { readonly startsOn: string; readonly name: string }[]
}

/** The charts that a specification wants answered: the u chart by day where it names none. */
export function specifiedDefectCharts(
  charts: readonly DefectChartRow[] = [],
  phases: readonly DefectChartPhaseRow[] = [],
): readonly [DefectChartChoice, ...DefectChartChoice[]] {
  const starts = phases.toSorted((one, other) => (one.startsOn < other.startsOn ? -1 : 1))
  const [first, ...others] = charts.map(
    ({ chart, baselineFrom: from, baselineTo: to }): DefectChartChoice => ({
      chart,
      phases: starts,
      ...(from !== undefined && to !== undefined && from <= to && { baseline: { from, to } }),
    }),
  )
  return first ? [first, ...others] : [{ chart: 'u-by-day', phases: starts }]
}

/** A chart of defects, or why there is none. */
export type DefectChart =
  | { readonly samples: readonly DefectSample[]; readonly chart: JudgedChart }
  | {
      readonly samples: readonly DefectSample[]
      readonly message: string
      readonly because: 'few' | 'no defect' | 'unfit'
    }

/** Below this many defects expected in a sample a chart of counts rings at a single one (common practice). */
const FEWEST_EXPECTED = 1

/** Whether the samples are so small that one defect already lies beyond the limits. */
export function isThin({ samples }: { readonly samples: readonly DefectSample[] }): boolean {
  const defects = samples.reduce((sum, sample) => sum + sample.defects, 0)
  return defects / samples.length < FEWEST_EXPECTED
}

/**
 * What inspections found, charted as chosen: each stretch with limits of its
 * own, estimated from its samples or from those of the baseline days and then
 * held. A stretch of fewer than eight samples has no limits.
 */
export function defectChart(
  inspections: readonly Inspection[],
  choice: DefectChartChoice,
  rules: readonly RunRule[],
): DefectChart {
  const kind = DEFECT_CHARTS[choice.chart]
  const samples = kind.samples(inspections).filter(({ jointsSeen }) => jointsSeen > 0)
  if (samples.length < FEWEST_TO_CHART)
    return {
      samples,
      message: `Limits need ${FEWEST_TO_CHART} ${kind.sampled}; there ${samples.length === 1 ? 'is' : 'are'} ${samples.length}.`,
      because: 'few',
    }
  if (samples.every(({ defects }) => defects === 0))
    return { samples, message: 'No defect was found: there is no level to chart yet.', because: 'no defect' }
  const refused = kind.refuses(samples)
  if (refused) return { samples, message: refused, because: 'unfit' }
  const chart = chartInPhases(samples, startsAmong(samples, choice.phases), (part) =>
    stretch(kind, part, choice),
  )
  return { samples, chart: judgeChart({ ...chart, behaviour: 'skewed' }, rules) }
}

function stretch(kind: DefectChartKind, part: readonly DefectSample[], { baseline }: DefectChartChoice) {
  if (part.length >= FEWEST_TO_CHART) return kind.chart(part, baselineFor(kind, part, baseline))
  // Any level will do: only the points are kept.
  const points = kind.chart(part, { kind: 'frozen', setBy: '', centre: 0.5 })
  return withoutLimits(points.kind, points.values, points.behaviour)
}

/** Held where the baseline days hold enough samples of this stretch, and a defect; else estimated from all of it. */
function baselineFor(
  kind: DefectChartKind,
  part: readonly DefectSample[],
  days: Days | undefined,
): Baseline<KnownLevel> {
  if (!days) return { kind: 'estimated' }
  const used = part.filter(({ on }) => on >= days.from && on <= days.to)
  if (used.length < FEWEST_TO_CHART || used.every(({ defects }) => defects === 0))
    return { kind: 'estimated' }
  const centre = kind.chart(used, { kind: 'estimated' }).centre[0]!
  return held({ centre }, `${used.length} samples`, days)
}

/** Where each reset falls among the samples; one before the first or after the last is none. */
function startsAmong(
  samples: readonly DefectSample[],
  phases: DefectChartChoice['phases'],
): readonly PhaseStart[] {
  const starts: PhaseStart[] = [{ name: 'from the start', from: 0 }]
  for (const { startsOn, name } of phases) {
    const from = samples.findIndex(({ on }) => on >= startsOn)
    if (from < 0) continue
    if (starts[starts.length - 1]!.from === from) starts.pop()
    starts.push({ name, from })
  }
  return starts
}
