import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode, worksCode } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

/** From here on what the line's machines log counts for the programme, for the days on which it runs there. */
export const stateLine = defineCommand({
  name: 'state-line',
  input: z.strictObject({ programme: programmeCode, line: worksCode('The line') }),
  load: async (tx, { line }, { programmeId }) => ({
    line: await tx.line.findUnique({
      where: { code: line },
      select: { id: true, code: true, name: true, closedAt: true },
    }),
    stated: await tx.programmeLine.findFirst({
      where: { programmeId, leftAt: null, line: { code: line } },
      select: { id: true },
    }),
  }),
  decide({ line, stated }, { line: asked }, { newId }) {
    if (!line) throw new Refused(`The works have no line ${asked}.`, { line: 'Choose a line of the works.' })
    if (line.closedAt) throw new Refused(`Line ${line.code} is closed.`, { line: 'Choose an open line.' })
    if (stated) throw new Refused(`The programme states line ${line.code} already.`)
    const row = { id: newId(), lineId: line.id }
    return { change: row, record: { ...row, line: line.code, name: line.name }, result: { line: line.code } }
  },
  async apply(tx, row, { programmeId, actor, now }) {
    await tx.programmeLine.create({ data: { ...row, programmeId, statedById: actor.personId, at: now } })
  },
})
