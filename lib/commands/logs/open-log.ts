import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, line, programmeCode } from '@/lib/commands/inputs'
import { CHARACTERISTICS, type CharacteristicKey } from '@/shared/records/characteristics'
import { Refused } from '@/shared/refused'

export const openLog = defineCommand({
  name: 'open-log',
  input: z.strictObject({
    programme: programmeCode,
    code: line('The log’s code', 40),
    characteristic: z.enum(Object.keys(CHARACTERISTICS) as [CharacteristicKey, ...CharacteristicKey[]], {
      error: 'Choose what is logged.',
    }),
    line: line('The line', 60),
    machine: line('The machine', 60),
    instrument: id.nullable(),
  }),
  load: async (tx, { code, instrument }, { programmeId }) => ({
    twin: await tx.log.findUnique({
      where: { programmeId_code: { programmeId, code } },
      select: { characteristic: true },
    }),
    instrument:
      instrument && (await tx.instrument.findUnique({ where: { id: instrument }, select: { tag: true } })),
  }),
  decide({ twin, instrument }, input, { newId }) {
    if (twin) throw new Refused(`There is a log ${input.code} already.`, { code: 'This code is taken.' })
    if (input.instrument && !instrument)
      throw new Refused('This instrument is not in the register.', {
        instrument: 'Choose one from the register.',
      })
    const log = {
      id: newId(),
      code: input.code,
      characteristic: input.characteristic,
      line: input.line,
      machine: input.machine,
      instrumentId: input.instrument,
    }
    return {
      change: log,
      record: { ...log, instrument: instrument ? instrument.tag : null },
      result: { log: log.code },
    }
  },
  async apply(tx, log, { programmeId, actor, now }) {
    await tx.log.create({ data: { ...log, programmeId, addedById: actor.personId, at: now } })
  },
})
