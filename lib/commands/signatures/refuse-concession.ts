import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'
import type { RecordedDeparture } from '@/shared/commands/signatures/departure-in-words'
import { Refused } from '@/shared/refused'

/** Refuses a concession, or takes one back that was granted; the finding fails again. */
export const refuseConcession = defineCommand({
  name: 'refuse-concession',
  input: z.strictObject({
    programme: programmeCode,
    concession: wholeNumber('The concession', 1, 1_000_000),
    reason,
  }),
  load: (tx, { concession }, { programmeId }) =>
    tx.concession.findUnique({ where: { programmeId_number: { programmeId, number: concession } } }),
  decide(concession, { reason: why }) {
    if (!concession) throw new Refused('There is no such concession in this programme.')
    if (concession.refusedAt) throw new Refused(`Concession ${concession.number} is refused already.`)
    const wasGranted = concession.designAt !== null && concession.qualityAt !== null
    return {
      change: { id: concession.id, why },
      record: {
        concession: concession.number,
        item: concession.itemKey,
        rule: concession.rule,
        wasGranted,
        reason: why,
        ...(concession.permit !== null && { permit: concession.permit as RecordedDeparture }),
      },
    }
  },
  async apply(tx, { id, why }, { actor, now }) {
    await tx.concession.update({
      where: { id },
      data: { refusedById: actor.personId, refusedAt: now, refusedWhy: why },
    })
  },
})
