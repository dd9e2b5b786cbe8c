import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id } from '@/lib/commands/inputs'
import { calibrationFields, refuseOddCalibration } from '@/lib/commands/instruments/instrument-input'
import { Refused } from '@/shared/refused'

/** Records a new calibration; an instrument taken out of use comes back into use. */
export const calibrateInstrument = defineCommand({
  name: 'calibrate-instrument',
  input: z.strictObject({ instrument: id, ...calibrationFields }),
  load: (tx, { instrument }) => tx.instrument.findUnique({ where: { id: instrument } }),
  decide(instrument, { calibratedOn, dueOn, certificate }, { today }) {
    if (!instrument) throw new Refused('There is no such instrument.')
    refuseOddCalibration(calibratedOn, dueOn, today)
    if (calibratedOn < instrument.calibratedOn)
      throw new Refused(`It was calibrated later, on ${instrument.calibratedOn}.`, {
        calibratedOn: 'Before the calibration on record.',
      })
    const { id: key, tag } = instrument
    return {
      change: { id: key, data: { calibratedOn, dueOn, certificate, outOfUse: false } },
      record: {
        instrument: key,
        tag,
        calibratedOn,
        dueOn,
        certificate,
        before: {
          calibratedOn: instrument.calibratedOn,
          dueOn: instrument.dueOn,
          certificate: instrument.certificate,
        },
      },
    }
  },
  async apply(tx, { id: key, data }, { now }) {
    await tx.instrument.update({ where: { id: key }, data: { ...data, updatedAt: now } })
  },
})
