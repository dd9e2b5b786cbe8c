import type { CalibrationStatus } from '@/shared/instruments/calibration-status'
import type { Measured } from '@/shared/rules/finding'

/** Whether a reading's instrument may be believed, as data. */
export const calibrationMeasured = (status: CalibrationStatus): Measured => ({
  ...(status.instrument && { instrument: status.instrument.tag }),
  ...(!status.stands && {
    calibration: status.reason,
    ...(status.since !== undefined && { since: status.since }),
  }),
})
