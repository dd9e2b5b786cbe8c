import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode, reason, worksCode } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

/** The line's readings go on counting for the days on which the programme ran there. */
export const leaveLine = defineCommand({
  name: 'leave-line',
  input: z.strictObject({ programme: programmeCode, line: worksCode('The line'), reason }),
  load: (tx, { line }, { programmeId }) =>
    tx.programmeLine.findFirst({
      where: { programmeId, leftAt: null, line: { code: line } },
      select: { id: true, line: { select: { code: true, name: true } } },
    }),
  decide(stated, { line, reason: why }) {
    if (!stated) throw new Refused(`The programme does not state line ${line}.`)
    return {
      change: { id: stated.id, why },
      record: { stated: stated.id, line: stated.line.code, name: stated.line.name, reason: why },
    }
  },
  async apply(tx, { id, why }, { actor, now }) {
    await tx.programmeLine.update({
      where: { id },
      data: { leftById: actor.personId, leftAt: now, leftWhy: why },
    })
  },
})
