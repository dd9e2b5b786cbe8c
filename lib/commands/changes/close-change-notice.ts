import { z } from 'zod'
import { loadNoticeStanding } from '@/lib/commands/changes/load-notice'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'

/** Ends a notice without its changes; it stays to be read. */
export const closeChangeNotice = defineCommand({
  name: 'close-change-notice',
  input: z.strictObject({
    programme: programmeCode,
    notice: wholeNumber('The change notice', 1, 1_000_000),
    disposition: z.enum(['refused', 'withdrawn'], { error: 'Choose what becomes of it.' }),
    reason,
  }),
  load: (tx, { notice }, context) => loadNoticeStanding(tx, context, notice),
  subject: ({ standing }, { disposition }) => ({ standing, disposition }),
  decide: ({ notice: { number, title } }, { disposition, reason: why }) => ({
    change: { number, disposition, why },
    record: { notice: number, title, disposition, reason: why },
  }),
  async apply(tx, { number, disposition, why }, { programmeId, actor, now }) {
    await tx.changeNotice.update({
      where: { programmeId_number: { programmeId, number } },
      data: { disposition, dispositionWhy: why, disposedById: actor.personId, disposedAt: now },
    })
  },
})
