import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, reason } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

/** Readings taken with it from now on are flagged, until it is calibrated again. */
export const takeInstrumentOutOfUse = defineCommand({
  name: 'take-instrument-out-of-use',
  input: z.strictObject({ instrument: id, reason }),
  load: (tx, { instrument }) => tx.instrument.findUnique({ where: { id: instrument } }),
  decide(instrument, { reason: why }) {
    if (!instrument) throw new Refused('There is no such instrument.')
    if (instrument.outOfUse) throw new Refused(`${instrument.tag} is out of use already.`)
    return {
      change: { id: instrument.id },
      record: { instrument: instrument.id, tag: instrument.tag, reason: why },
    }
  },
  async apply(tx, { id: key }, { now }) {
    await tx.instrument.update({ where: { id: key }, data: { outOfUse: true, updatedAt: now } })
  },
})
