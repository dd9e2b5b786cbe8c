import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, line, programmeCode, worksCode } from '@/lib/commands/inputs'
import { openMachineOf } from '@/lib/commands/works/load-machine'
import { numberWanted } from '@/shared/columns/number-wanted'
import type { Characteristic } from '@/shared/records/characteristic'
import { CHARACTERISTICS, type CharacteristicKey } from '@/shared/records/characteristics'
import { Refused } from '@/shared/refused'

/** Opens a log of a machine. One that is taken of a single programme's boards, such as a profile, names the programme. */
export const openLog = defineCommand({
  name: 'open-log',
  input: z.strictObject({
    machine: worksCode('The machine'),
    code: line('The log’s code', 40),
    characteristic: z.enum(Object.keys(CHARACTERISTICS) as [CharacteristicKey, ...CharacteristicKey[]], {
      error: 'Choose what is logged.',
    }),
    instrument: id.nullable(),
    /** How many hours may pass between readings while the line works. */
    everyH: z
      .number({ error: numberWanted('The interval') })
      .positive('The interval is above 0 h.')
      .max(8784, 'The interval is at most a year.')
      .nullable()
      .default(null),
    onlyFor: programmeCode.nullable().default(null),
  }),
  load: async (tx, { code, instrument, onlyFor }, { trailId }) => ({
    machine: await openMachineOf(tx, trailId),
    twin: await tx.log.findFirst({
      where: { code, subject: { kind: 'machine' } },
      select: { machine: true },
    }),
    instrument:
      instrument && (await tx.instrument.findUnique({ where: { id: instrument }, select: { tag: true } })),
    onlyFor: onlyFor && (await tx.programme.findUnique({ where: { code: onlyFor }, select: { id: true } })),
  }),
  decide({ machine, twin, instrument, onlyFor }, input, { newId }) {
    const { ofOneProgramme }: Characteristic = CHARACTERISTICS[input.characteristic]
    if (twin)
      throw new Refused(`There is a log ${input.code} already, of ${twin.machine}.`, {
        code: 'This code is taken.',
      })
    if (input.instrument && !instrument)
      throw new Refused('This instrument is not in the register.', {
        instrument: 'Choose one from the register.',
      })
    if (input.onlyFor && !onlyFor)
      throw new Refused(`There is no programme ${input.onlyFor}.`, { onlyFor: 'Choose a programme.' })
    if (ofOneProgramme && !onlyFor)
      throw new Refused('Such a log is taken of one programme’s boards. Say of which.', {
        onlyFor: 'Choose a programme.',
      })
    const log = {
      id: newId(),
      code: input.code,
      characteristic: input.characteristic,
      line: machine.line.code,
      machine: machine.code,
      machineId: machine.id,
      onlyForId: onlyFor ? onlyFor.id : null,
      everyH: input.everyH,
      instrumentId: input.instrument,
    }
    return {
      change: log,
      record: { ...log, onlyFor: input.onlyFor, instrument: instrument ? instrument.tag : null },
      result: { log: log.code },
    }
  },
  async apply(tx, log, { trailId, actor, now }) {
    await tx.log.create({ data: { ...log, trailId, addedById: actor.personId, at: now } })
  },
})
