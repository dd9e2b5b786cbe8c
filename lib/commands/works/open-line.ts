import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, worksCode } from '@/lib/commands/inputs'
import { openSubject } from '@/lib/commands/works/open-subject'
import { Refused } from '@/shared/refused'

export const openLine = defineCommand({
  name: 'open-line',
  input: z.strictObject({ code: worksCode('The line’s code'), name: line('The line’s name', 80) }),
  load: (tx, { code }) => tx.line.findUnique({ where: { code }, select: { name: true } }),
  decide(twin, { code, name }, { trailId }) {
    if (twin)
      throw new Refused(`Line ${code} is there already: ${twin.name}.`, { code: 'This code is taken.' })
    return {
      change: { id: trailId, code, name },
      record: { id: trailId, code, name },
      result: { line: code },
    }
  },
  async apply(tx, { id, code, name }, { actor, now }) {
    await openSubject(tx, { id, kind: 'line', code })
    await tx.line.create({ data: { id, code, name, openedById: actor.personId, openedAt: now } })
  },
})
