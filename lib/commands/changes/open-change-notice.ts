import { z } from 'zod'
import { noticeCost } from '@/lib/commands/changes/notice-cost'
import { defineCommand } from '@/lib/commands/command'
import { line, programmeCode, reason } from '@/lib/commands/inputs'

/** Begins a notice that changes are then put into. A saving is a negative cost; what nobody knows stays empty. */
export const openChangeNotice = defineCommand({
  name: 'open-change-notice',
  input: z.strictObject({
    programme: programmeCode,
    title: line('The title', 120),
    reason,
    ...noticeCost,
  }),
  load: async (tx, _input, { programmeId }) =>
    (await tx.changeNotice.aggregate({ where: { programmeId }, _max: { number: true } }))._max.number ?? 0,
  decide(newest, { programme: _, ...typed }, { newId }) {
    const notice = { id: newId(), number: newest + 1, ...typed }
    return { change: notice, record: notice, result: { notice: notice.number } }
  },
  async apply(tx, notice, { programmeId, actor, now }) {
    await tx.changeNotice.create({
      data: { ...notice, programmeId, openedById: actor.personId, openedAt: now },
    })
  },
})
