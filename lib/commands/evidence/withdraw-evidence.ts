import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, programmeCode, reason } from '@/lib/commands/inputs'
import type { Pictured } from '@/shared/reviews/pictured'
import { Refused } from '@/shared/refused'

/** Takes evidence off an item; the file and the trail keep it. By who attached it, or by quality. */
export const withdrawEvidence = defineCommand({
  name: 'withdraw-evidence',
  input: z.strictObject({ programme: programmeCode, evidence: id, reason }),
  async load(tx, { evidence: key }, { trailId }) {
    const evidence = await tx.evidence.findFirst({ where: { id: key, trailId, withdrawnAt: null } })
    if (!evidence) throw new Refused('This evidence is not attached any more.')
    return evidence
  },
  subject: (evidence) => evidence,
  decide: ({ id: key, itemKey, about, kind, sha256, fileName, url }, { reason: why }) => ({
    change: { id: key, why },
    record: {
      evidence: key,
      itemKey,
      about: about as Pictured | null,
      kind,
      sha256,
      fileName,
      url,
      reason: why,
    },
  }),
  async apply(tx, { id: key, why }, { actor, now }) {
    await tx.evidence.update({
      where: { id: key },
      data: { withdrawnById: actor.personId, withdrawnAt: now, withdrawnWhy: why },
    })
  },
})
