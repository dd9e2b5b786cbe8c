import { dwellS } from '@/shared/physics/wave-contact'
import type { Log } from '@/shared/records/log'
import { seriesFrom, type LogSeries } from './log-series'

/** Dwell in the main wave at each reading, in seconds. */
export const dwellSeries = (log: Log): LogSeries =>
  seriesFrom(log, (cell) => dwellOf(cell('contactLengthMm'), cell('conveyorSpeedMPerMin')))

/** Dwell in both waves together, for readings that hold the first wave too. */
export const totalDwellSeries = (log: Log): LogSeries =>
  seriesFrom(log, (cell) => {
    const main = cell('contactLengthMm')
    const first = cell('firstWaveLengthMm')
    return main === undefined || first === undefined
      ? undefined
      : dwellOf(main + first, cell('conveyorSpeedMPerMin'))
  })

function dwellOf(lengthMm: number | undefined, speedMPerMin: number | undefined): number | undefined {
  if (!(lengthMm !== undefined && lengthMm > 0) || !(speedMPerMin !== undefined && speedMPerMin > 0))
    return undefined
  return Number(dwellS(lengthMm, speedMPerMin).toPrecision(12))
}
