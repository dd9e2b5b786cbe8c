import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { reason, worksCode } from '@/lib/commands/inputs'
import { partInUse } from '@/lib/commands/parts/load-part'

/** No programme shall list the part any more; what is recorded of it stays. */
export const withdrawPart = defineCommand({
  name: 'withdraw-part',
  input: z.strictObject({ part: worksCode('The part'), reason }),
  load: (tx, _input, { trailId }) => partInUse(tx, trailId),
  decide: ({ code, newest }, { reason: why }) => ({
    change: { why },
    record: { part: code, description: String(newest.values['description']), reason: why },
    result: { part: code },
  }),
  async apply(tx, { why }, { trailId, actor, now }) {
    await tx.part.update({
      where: { id: trailId },
      data: { withdrawnById: actor.personId, withdrawnAt: now, withdrawnWhy: why },
    })
  },
})
