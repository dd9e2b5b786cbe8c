import { acidNumber } from '@/shared/physics/acid-number'
import type { Log } from '@/shared/records/log'
import { seriesFrom, type LogSeries } from './log-series'

/** The acid number of each titration of a log. */
export const acidNumberSeries = (log: Log): LogSeries =>
  seriesFrom(log, (cell) => {
    const titrantMl = cell('titrantMl')
    const titrantMolPerL = cell('titrantMolPerL')
    const sampleG = cell('sampleG')
    if (titrantMl === undefined || titrantMolPerL === undefined || sampleG === undefined) return undefined
    return acidNumber({ titrantMl, titrantMolPerL, sampleG })
  })
