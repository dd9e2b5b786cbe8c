import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, reason } from '@/lib/commands/inputs'
import { standingOf } from '@/lib/commands/corrections/correction'
import { recordable } from '@/lib/commands/recordable'
import type { CorrectedValues } from '@/shared/records/correction'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** Takes a certificate off a training; the file and the trail keep it. */
export const withdrawCertificate = defineCommand({
  name: 'withdraw-certificate',
  input: z.strictObject({ evidence: id, reason }),
  async load(tx, { evidence: key }, { trailId }) {
    const evidence = await tx.evidence.findFirst({ where: { id: key, trailId, withdrawnAt: null } })
    if (!evidence) throw new Refused('This certificate is not attached any more.')
    const { record: of } = evidence.about as { readonly record: string }
    const record = await tx.record.findUniqueOrThrow({ where: { id: of } })
    const { values } = await standingOf(tx, 'record', of, record.data as CorrectedValues)
    return { ...evidence, of: recordable(values) as Record<string, JsonValue> }
  },
  decide: ({ id: key, sha256, fileName, about, of }, { reason: why }) => ({
    change: { id: key, why },
    record: {
      evidence: key,
      about: about as JsonValue,
      of,
      sha256,
      fileName: fileName ?? '',
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
