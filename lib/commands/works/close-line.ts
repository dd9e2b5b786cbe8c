import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { reason, worksCode } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

/** Closes a line on which no machine is open any more; what was recorded of it stays. */
export const closeLine = defineCommand({
  name: 'close-line',
  input: z.strictObject({ line: worksCode('The line'), reason }),
  load: (tx, _input, { trailId }) =>
    tx.line.findUniqueOrThrow({
      where: { id: trailId },
      select: {
        code: true,
        name: true,
        closedAt: true,
        machines: { where: { closedAt: null }, select: { code: true }, orderBy: { code: 'asc' } },
      },
    }),
  decide({ code, name, closedAt, machines }, { reason: why }) {
    if (closedAt) throw new Refused(`Line ${code} is closed already.`)
    if (machines.length > 0)
      throw new Refused(
        `Machines of line ${code} are open: ${machines.map((machine) => machine.code).join(', ')}. Close them first.`,
      )
    return { change: { why }, record: { line: code, name, reason: why }, result: { line: code } }
  },
  async apply(tx, { why }, { trailId, actor, now }) {
    await tx.line.update({
      where: { id: trailId },
      data: { closedById: actor.personId, closedAt: now, closedWhy: why },
    })
  },
})
