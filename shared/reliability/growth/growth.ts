import { requireReadings } from '@/shared/statistics/reading-checks'

/** Mean times between failures of a system under improvement, in the unit of the failure times. */
export interface GrowthState {
  /** Over all the time so far. */
  readonly cumulativeMeanTime: number
  /** At the end of the time so far, if improvement stopped. */
  readonly currentMeanTime: number
}

/** Failure times of one system (or of all together), summed up, in order and above zero; two may fall together. */
export function requireFailureTimes(times: readonly number[], min: number): void {
  requireReadings(times, 'failure times', min)
  times.forEach((time, index) => {
    if (!(time > 0 && time >= (times[index - 1] ?? 0)))
      throw new RangeError(`Failure times must be in order and above zero; number ${index + 1} is ${time}.`)
  })
}
