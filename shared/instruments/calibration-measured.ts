import type { CalibrationStanding } from '@/shared/instruments/calibration-status'
import type { Measured } from '@/shared/rules/finding'

/** Whether a reading's instrument may be believed, as data. */
export const calibrationMeasured = (standing: CalibrationStanding): Measured => ({
  ...(standing.instrument && { instrument: standing.instrument.tag }),
  ...(!standing.stands && {
    calibration: standing.reason,
    ...(standing.since !== undefined && { since: standing.since }),
  }),
})
