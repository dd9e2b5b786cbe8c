import type { Readings } from '@/shared/statistics/reading-checks'
import type { Chart, ChartKind, LimitsOrigin, PointBehaviour } from './chart'

/** Distance of the limits from the centre, in standard deviations of the point: the usual three. */
export const LIMIT_WIDTH_SIGMAS = 3

type Drawing = {
  kind: ChartKind
  behaviour: PointBehaviour
  values: Readings
  centre: number
  /** One for all points, or one a point. */
  sigma: number | readonly number[]
  limits: LimitsOrigin
  /** Index of the reading that the first point belongs to. */
  firstPosition?: number
  limitWidth?: number
  /** What the statistic cannot fall below or rise above: limits stop there. */
  floor?: number
  ceiling?: number
}

/** Puts centre and limits to every point, and makes one phase of them. */
export function drawLimits(drawing: Drawing): Chart {
  const { values, centre, limitWidth = LIMIT_WIDTH_SIGMAS, floor = -Infinity, ceiling = Infinity } = drawing
  const size = values.length
  const sigma =
    typeof drawing.sigma === 'number' ? filled(size, drawing.sigma) : Float64Array.from(drawing.sigma)
  const lower = new Float64Array(size)
  const upper = new Float64Array(size)
  for (let index = 0; index < size; index++) {
    lower[index] = Math.max(floor, centre - limitWidth * sigma[index]!)
    upper[index] = Math.min(ceiling, centre + limitWidth * sigma[index]!)
  }
  return {
    kind: drawing.kind,
    behaviour: drawing.behaviour,
    positions: successive(size, drawing.firstPosition ?? 0),
    values: Float64Array.from(values),
    centre: filled(size, centre),
    sigma,
    lower,
    upper,
    phases: [{ name: 'whole', from: 0, to: size, limits: drawing.limits }],
  }
}

const filled = (size: number, value: number): Float64Array => new Float64Array(size).fill(value)

function successive(size: number, first: number): Uint32Array {
  const positions = new Uint32Array(size)
  for (let index = 0; index < size; index++) positions[index] = first + index
  return positions
}
