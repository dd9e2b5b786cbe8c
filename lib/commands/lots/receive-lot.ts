import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, optionalLine, programmeCode, wholeNumber } from '@/lib/commands/inputs'
import { calendarDate } from '@/shared/columns/calendar-date'
import { numberWanted } from '@/shared/columns/number-wanted'
import { LOT_KINDS } from '@/shared/methods/lot-kind'
import { Refused } from '@/shared/refused'

export const receiveLot = defineCommand({
  name: 'receive-lot',
  input: z.strictObject({
    programme: programmeCode,
    code: line('The lot code', 40),
    kind: z.enum(LOT_KINDS, { error: 'Choose what kind of lot it is.' }),
    part: line('What it is', 120),
    supplier: line('The supplier', 120),
    dateCode: optionalLine('The date code', 40),
    quantity: wholeNumber('The quantity', 1, 100_000_000),
    receivedOn: calendarDate('The date received'),
    temperatureC: z
      .number({ error: numberWanted('The store temperature') })
      .min(-60, 'The store temperature lies between −60 and 150 °C.')
      .max(150, 'The store temperature lies between −60 and 150 °C.'),
    relativeHumidityPct: z
      .number({ error: numberWanted('The humidity') })
      .min(0, 'The humidity lies between 0 and 100 %.')
      .max(100, 'The humidity lies between 0 and 100 %.'),
    packing: line('The packing', 120),
    supplierResult: optionalLine('The supplier’s result', 1000),
  }),
  load: (tx, { code }, { trailId }) =>
    tx.lot.findUnique({ where: { trailId_code: { trailId, code } }, select: { part: true } }),
  decide(twin, input, { newId, today }) {
    if (twin)
      throw new Refused(`Lot ${input.code} is here already (${twin.part}).`, {
        code: 'This lot code is taken.',
      })
    if (input.receivedOn > today)
      throw new Refused('A lot cannot be received in the future.', {
        receivedOn: 'This date lies in the future.',
      })
    const { programme: _, temperatureC, relativeHumidityPct, packing, ...rest } = input
    const lot = { id: newId(), ...rest, storage: { temperatureC, relativeHumidityPct, packing } }
    return { change: lot, record: { ...lot }, result: { lot: lot.code } }
  },
  async apply(tx, lot, { trailId, actor, now }) {
    await tx.lot.create({ data: { ...lot, trailId, addedById: actor.personId, at: now } })
  },
})
