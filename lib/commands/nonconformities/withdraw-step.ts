import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, programmeCode, reason } from '@/lib/commands/inputs'
import type { StepKind } from '@/shared/nonconformities/nonconformity'
import { Refused } from '@/shared/refused'

/** Something recorded of a nonconformity was wrong: it stays to be read, and counts no more. */
export const withdrawStep = defineCommand({
  name: 'withdraw-step',
  input: z.strictObject({ programme: programmeCode, step: id, reason }),
  async load(tx, { step }, { programmeId }) {
    const found = await tx.nonconformityStep.findFirst({
      where: { id: step, programmeId, withdrawnAt: null },
    })
    if (!found) throw new Refused('This does not count any more.')
    return found
  },
  subject: (step) => step,
  decide: ({ id: step, nonconformity, kind, text }, { reason: why }) => ({
    change: { id: step, why },
    record: { step, nonconformity, kind: kind as StepKind, text, reason: why },
  }),
  async apply(tx, { id: step, why }, { actor, now }) {
    await tx.nonconformityStep.update({
      where: { id: step },
      data: { withdrawnById: actor.personId, withdrawnAt: now, withdrawnWhy: why },
    })
  },
})
