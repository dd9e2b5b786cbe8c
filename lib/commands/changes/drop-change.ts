import { z } from 'zod'
import { loadNotice } from '@/lib/commands/changes/load-notice'
import { defineCommand } from '@/lib/commands/command'
import { id, programmeCode, wholeNumber } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

/** Takes a change out of an open notice; it stays to be read in the trail. */
export const dropChange = defineCommand({
  name: 'drop-change',
  input: z.strictObject({
    programme: programmeCode,
    notice: wholeNumber('The change notice', 1, 1_000_000),
    change: id,
  }),
  async load(tx, { notice: number, change: key }, context) {
    const notice = await loadNotice(tx, context, number)
    const change = notice.changes.find((entry) => entry.id === key)
    if (!change) throw new Refused('The notice does not hold this change any more.')
    return { notice, change }
  },
  subject: (state) => state,
  decide: ({ notice, change }) => ({
    change: change.id,
    record: { id: change.id, notice: notice.number, change: { ...change.change } },
  }),
  async apply(tx, key, { actor, now }) {
    await tx.noticeChange.update({
      where: { id: key },
      data: { droppedById: actor.personId, droppedAt: now },
    })
  },
})
