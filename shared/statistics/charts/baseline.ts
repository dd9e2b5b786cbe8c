import { requireNotNegative } from '@/shared/statistics/argument-checks'
import { requireFinite, type Readings } from '@/shared/statistics/reading-checks'
import type { LimitsOrigin } from './chart'

/** Limits estimated from the plotted points: all of them, or a span, less those with a known cause. */
export type EstimatedBaseline = {
  kind: 'estimated'
  /** First point used, counted from 0. */
  from?: number
  /** Point after the last used. */
  to?: number
  /** Points left out because their cause was found and removed. */
  leaveOut?: readonly number[]
}

/** Limits set earlier and held, with a word on who or what set them. */
export type FrozenBaseline<Known> = { kind: 'frozen'; setBy: string } & Known

export type Baseline<Known> = EstimatedBaseline | FrozenBaseline<Known>

/** For charts of measured values: the mean and standard deviation of the process itself. */
export type KnownProcess = { centre: number; processSigma: number }

/** For charts of counts: the level fixes the spread. */
export type KnownLevel = { centre: number }

export const ESTIMATE_FROM_ALL: EstimatedBaseline = { kind: 'estimated' }

/** Which of `count` points the limits rest on, ascending. */
export function baselinePoints(count: number, baseline: EstimatedBaseline): Uint32Array {
  const { from = 0, to = count, leaveOut = [] } = baseline
  if (!(Number.isInteger(from) && Number.isInteger(to) && from >= 0 && to <= count && from < to))
    throw new RangeError(`The baseline runs from ${from} to ${to}, but the chart has ${count} points.`)
  const points = new Uint32Array(to - from)
  for (let index = from; index < to; index++) points[index - from] = index
  const kept = leaveOut.length === 0 ? points : points.filter((point) => !leaveOut.includes(point))
  if (kept.length === 0) throw new RangeError('Every point is left out; nothing remains to set limits from.')
  return kept
}

/** The values at those points. */
export function valuesAt(points: Uint32Array, values: Readings): Float64Array {
  const picked = new Float64Array(points.length)
  for (let index = 0; index < points.length; index++) picked[index] = values[points[index]!]!
  return picked
}

/** The frozen centre and standard deviation, checked. */
export function knownProcess({ centre, processSigma }: FrozenBaseline<KnownProcess>): KnownProcess {
  requireFinite(centre, 'frozen centre line')
  requireNotNegative(processSigma, 'frozen standard deviation')
  return { centre, processSigma }
}

/** What the chart says of its limits. */
export function limitsOrigin(baseline: Baseline<object>, pointsUsed: number): LimitsOrigin {
  if (baseline.kind === 'frozen') return { kind: 'frozen', setBy: baseline.setBy }
  return { kind: 'estimated', pointsUsed, pointsLeftOut: [...(baseline.leaveOut ?? [])] }
}
