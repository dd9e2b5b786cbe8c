import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line } from '@/lib/commands/inputs'
import { calibrationFields, refuseOddCalibration } from '@/lib/commands/instruments/instrument-input'
import { Refused } from '@/shared/refused'

export const addInstrument = defineCommand({
  name: 'add-instrument',
  input: z.strictObject({
    tag: line('The tag', 40),
    measures: line('What it measures', 120),
    ...calibrationFields,
  }),
  load: (tx, { tag }) => tx.instrument.findUnique({ where: { tag }, select: { measures: true } }),
  decide(twin, { tag, measures, calibratedOn, dueOn, certificate }, { newId, today }) {
    if (twin) throw new Refused(`The tag ${tag} is taken (${twin.measures}).`, { tag: 'This tag is taken.' })
    refuseOddCalibration(calibratedOn, dueOn, today)
    const instrument = { id: newId(), tag, measures, calibratedOn, dueOn, certificate }
    return { change: instrument, record: instrument, result: { instrument: instrument.id } }
  },
  async apply(tx, instrument, { now }) {
    await tx.instrument.create({ data: { ...instrument, updatedAt: now } })
  },
})
