import { line } from '@/lib/commands/inputs'
import { calendarDate } from '@/shared/columns/calendar-date'
import { Refused } from '@/shared/refused'

export const calibrationFields = {
  calibratedOn: calendarDate('The date of calibration'),
  dueOn: calendarDate('The date it is due'),
  certificate: line('The certificate', 120),
}

/** A calibration lies in the past and its due date behind it. */
export function refuseOddCalibration(calibratedOn: string, dueOn: string, today: string): void {
  if (calibratedOn > today)
    throw new Refused('A calibration cannot lie in the future.', {
      calibratedOn: 'This date lies in the future.',
    })
  if (dueOn <= calibratedOn)
    throw new Refused('The due date lies behind the calibration.', {
      dueOn: 'Choose a day after the calibration.',
    })
}
