import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { worksCode } from '@/lib/commands/inputs'
import { openSubject } from '@/lib/commands/works/open-subject'
import { Refused } from '@/shared/refused'
import { MACHINE_KIND_KEYS, type MachineKind } from '@/shared/works/machine-kind'

export const openMachine = defineCommand({
  name: 'open-machine',
  input: z.strictObject({
    line: worksCode('The line'),
    code: worksCode('The machine’s code'),
    kind: z.enum(MACHINE_KIND_KEYS as [MachineKind, ...MachineKind[]], { error: 'Choose what it is.' }),
  }),
  load: async (tx, { line, code }) => ({
    line: await tx.line.findUnique({
      where: { code: line },
      select: { id: true, code: true, closedAt: true },
    }),
    twin: await tx.machine.findUnique({
      where: { code },
      select: { code: true, line: { select: { code: true } } },
    }),
  }),
  decide({ line, twin }, { code, kind, line: asked }, { trailId }) {
    if (!line) throw new Refused(`The works have no line ${asked}.`, { line: 'Choose a line of the works.' })
    if (line.closedAt) throw new Refused(`Line ${line.code} is closed.`, { line: 'Choose an open line.' })
    if (twin)
      throw new Refused(`Machine ${code} is there already, on line ${twin.line.code}.`, {
        code: 'This code is taken.',
      })
    return {
      change: { id: trailId, code, kind, lineId: line.id },
      record: { id: trailId, code, kind, line: line.code, lineId: line.id },
      result: { machine: code },
    }
  },
  async apply(tx, machine, { actor, now }) {
    await openSubject(tx, { id: machine.id, kind: 'machine', code: machine.code })
    await tx.machine.create({ data: { ...machine, openedById: actor.personId, openedAt: now } })
  },
})
