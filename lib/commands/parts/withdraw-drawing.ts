import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, reason, worksCode } from '@/lib/commands/inputs'
import { partInUse } from '@/lib/commands/parts/load-part'
import { Refused } from '@/shared/refused'

/** Takes a drawing off a part; the file and the trail keep it. */
export const withdrawDrawing = defineCommand({
  name: 'withdraw-drawing',
  input: z.strictObject({ part: worksCode('The part'), evidence: id, reason }),
  async load(tx, { evidence: key }, { trailId }) {
    const { code } = await partInUse(tx, trailId)
    const evidence = await tx.evidence.findFirst({
      where: { id: key, trailId, withdrawnAt: null },
      select: { id: true, sha256: true, fileName: true },
    })
    if (!evidence) throw new Refused('This drawing is not attached any more.')
    return { code, ...evidence }
  },
  decide: ({ code, id: key, sha256, fileName }, { reason: why }) => ({
    change: { id: key, why },
    record: { part: code, evidence: key, sha256, fileName, reason: why },
  }),
  async apply(tx, { id: key, why }, { actor, now }) {
    await tx.evidence.update({
      where: { id: key },
      data: { withdrawnById: actor.personId, withdrawnAt: now, withdrawnWhy: why },
    })
  },
})
