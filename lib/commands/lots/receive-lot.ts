import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, optionalLine, wholeNumber, worksCode } from '@/lib/commands/inputs'
import { openSupplier } from '@/lib/commands/suppliers/open-supplier'
import { calendarDate } from '@/shared/columns/calendar-date'
import { numberWanted } from '@/shared/columns/number-wanted'
import { LOT_KINDS } from '@/shared/methods/lot-kind'
import { Refused } from '@/shared/refused'

export const receiveLot = defineCommand({
  name: 'receive-lot',
  input: z.strictObject({
    supplier: worksCode('The supplier'),
    code: line('The lot code', 40),
    kind: z.enum(LOT_KINDS, { error: 'Choose what kind of lot it is.' }),
    part: line('What it is', 120),
    dateCode: optionalLine('The date code', 40),
    quantity: wholeNumber('The quantity', 1, 100_000_000),
    receivedOn: calendarDate('The date received'),
    /** The last day on which it may be used, where one is stated. */
    expiresOn: calendarDate('The last day').nullable().default(null),
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
  load: async (tx, { code }, { trailId }) => ({
    supplier: await openSupplier(tx, trailId),
    twin: await tx.lot.findUnique({ where: { trailId_code: { trailId, code } }, select: { part: true } }),
  }),
  decide({ supplier, twin }, input, { newId, today }) {
    if (twin)
      throw new Refused(`Lot ${input.code} of ${supplier.code} is here already (${twin.part}).`, {
        code: 'This lot code is taken.',
      })
    if (input.receivedOn > today)
      throw new Refused('A lot cannot be received in the future.', {
        receivedOn: 'This date lies in the future.',
      })
    if (input.expiresOn !== null && input.expiresOn < input.receivedOn)
      throw new Refused('The last day lies before the day it was received.', {
        expiresOn: 'Before the date received.',
      })
    const { temperatureC, relativeHumidityPct, packing, ...rest } = input
    const lot = {
      id: newId(),
      ...rest,
      supplier: supplier.code,
      storage: { temperatureC, relativeHumidityPct, packing },
    }
    return {
      change: lot,
      record: { atSupplier: supplier.code, ...lot },
      result: { supplier: supplier.code, lot: lot.code },
    }
  },
  async apply(tx, lot, { trailId, actor, now }) {
    await tx.lot.create({ data: { ...lot, trailId, addedById: actor.personId, at: now } })
  },
})
