import type { Baseline, KnownProcess } from '@/shared/statistics/charts/baseline'
import type { Chart, ChartKind } from '@/shared/statistics/charts/chart'
import { chartInPhases } from '@/shared/statistics/charts/phases'
import { withoutLimits } from '@/shared/statistics/charts/without-limits'
import type { ChartChoice } from '../chart-choice'
import { FEWEST_TO_CHART, phaseStarts } from '../chart-stretches'
import type { Series } from '@/shared/logs/log-series'
import { baselineFor } from '../fixed-limits'

/** A chart of single readings. */
export interface ReadingsDrawing {
  readonly kind: ChartKind
  /** One stretch with its limits. */
  draw(part: readonly number[], baseline: Baseline<KnownProcess>): Chart
  /** What is plotted of a stretch too short for limits. */
  points(part: readonly number[]): readonly number[]
}

/** Single readings charted stretch by stretch; a stretch of fewer than eight has no limits. */
export const chartOfReadings = (
  { instants, values, log }: Series,
  choice: ChartChoice,
  { kind, draw, points }: ReadingsDrawing,
): Chart =>
  chartInPhases(values, phaseStarts({ instants, log }, choice.phases), (part, start) =>
    part.length < FEWEST_TO_CHART
      ? withoutLimits(kind, points(part))
      : draw(part, baselineFor(part, start, { instants, log }, choice)),
  )
