import { z } from 'zod'

/** What an entry says of a calibration. */
export const calibrationRecord = z.object({
  calibratedOn: z.string(),
  dueOn: z.string(),
  certificate: z.string(),
})

export const calibrationInWords = ({
  calibratedOn,
  dueOn,
  certificate,
}: z.infer<typeof calibrationRecord>): string =>
  `calibrated on ${calibratedOn}, due on ${dueOn}, certificate ${certificate}`
