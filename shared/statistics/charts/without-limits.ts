import type { Chart, ChartKind, PointBehaviour } from './chart'
import { drawLimits } from './draw-limits'

/** Points of a stretch that is too short to estimate limits from: plotted, with nothing to hold them against. */
export const withoutLimits = (
  kind: ChartKind,
  values: readonly number[] | Float64Array,
  behaviour: PointBehaviour = 'near-normal',
): Chart =>
  drawLimits({
    kind,
    behaviour,
    values,
    centre: Number.NaN,
    sigma: Number.NaN,
    firstPosition: kind === 'moving-range' ? 1 : 0,
    limits: { kind: 'estimated', pointsUsed: 0, pointsLeftOut: [] },
  })
