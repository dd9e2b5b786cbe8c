import { densityAtReference } from '@/shared/physics/flux-density'
import type { Log } from '@/shared/records/log'
import { seriesFrom, type LogSeries } from './log-series'

/** Taken where the specification leaves the data sheet's value open. */
export const USUAL_REFERENCE_C = 25

export const USUAL_COEFFICIENT = 0.00085

export const USUAL_THINNER_G_PER_ML = 0.781

/** The readings of a log brought to the reference temperature. */
export const densitySeries = (
  log: Log,
  referenceC = USUAL_REFERENCE_C,
  coefficient = USUAL_COEFFICIENT,
): LogSeries =>
  seriesFrom(log, (cell) => {
    const densityGPerMl = cell('densityGPerMl')
    const temperatureC = cell('temperatureC')
    if (densityGPerMl === undefined || temperatureC === undefined || !(densityGPerMl > 0)) return undefined
    return densityAtReference({ densityGPerMl, temperatureC, referenceC, coefficientGPerMlPerK: coefficient })
  })
