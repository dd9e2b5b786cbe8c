import {
  fluxDensityCoefficient,
  fluxDensityTarget,
  fluxDensityTolerance,
  fluxReferenceTemperature,
} from '@/shared/plan/parameters/control-flux'
import type { Parameter } from '@/shared/plan/parameter'
import { fluxDensity } from '@/shared/records/characteristics/flux-density'
import { findCharacteristic } from '@/shared/records/characteristics'
import type { Log } from '@/shared/records/log'
import { columnSeries, type LogSeries } from '@/shared/records/log-series'
import { answerTo, OUTSIDE_WINDOW, type SignalAnswer } from '@/shared/records/signal-answers'
import { densitySeries, USUAL_COEFFICIENT, USUAL_REFERENCE_C } from '@/shared/rules/control/flux-density'
import { windowOfLog } from '@/shared/rules/control/log-window'
import { excursionsFrom, windowAround, type ProcessWindow } from '@/shared/rules/control/logged-window'
import type { Facts } from '@/shared/rules/facts'

/** What the specification limits of a log: the values it is about, and their window. */
export interface LimitedSeries {
  readonly series: LogSeries
  readonly window: ProcessWindow | undefined
  /** The temperature that density is brought to; undefined for values taken as read. */
  readonly referenceC?: number
}

/** Flux density is limited at one temperature, the rest as read. */
export function limitedSeries(log: Log, facts: Facts): LimitedSeries | undefined {
  const charted = findCharacteristic(log.characteristic)?.charted
  if (charted === undefined) return undefined
  if (log.characteristic !== fluxDensity.key)
    return { series: columnSeries(log, charted), window: windowOfLog(log.characteristic, facts) }
  const valueOf = ({ key }: Parameter<number>) => facts.values.get(key) as number | undefined
  const [target, tolerance] = [valueOf(fluxDensityTarget), valueOf(fluxDensityTolerance)]
  const referenceC = valueOf(fluxReferenceTemperature) ?? USUAL_REFERENCE_C
  return {
    series: densitySeries(log, referenceC, valueOf(fluxDensityCoefficient) ?? USUAL_COEFFICIENT),
    window:
      target === undefined || tolerance === undefined
        ? undefined
        : windowAround(target, tolerance, 'g/ml', 'specified'),
    referenceC,
  }
}

/** A stretch of readings outside the window that nobody has answered yet, by its first reading. */
export interface OpenExcursion {
  readonly instant: number
  readonly readings: number
  readonly value: number
}

/** Every stretch outside the window without an answer, oldest first. */
export function openExcursions(log: Log, facts: Facts): OpenExcursion[] {
  const limited = limitedSeries(log, facts)
  if (!limited?.window) return []
  const { series, window } = limited
  const answers = (facts.records.byKind.get('signal-answer') ?? []) as readonly SignalAnswer[]
  return excursionsFrom(series.values, window).flatMap(({ first, last }) => {
    const [instant, value] = [series.instants[first], series.values[first]]
    if (instant === undefined || value === undefined) return []
    const answered = answerTo(answers, { log: log.code, chartRule: OUTSIDE_WINDOW, instant })
    return answered ? [] : [{ instant, value, readings: last - first + 1 }]
  })
}
