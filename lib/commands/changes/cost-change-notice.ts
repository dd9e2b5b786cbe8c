import { z } from 'zod'
import { loadNotice } from '@/lib/commands/changes/load-notice'
import { noticeCost } from '@/lib/commands/changes/notice-cost'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'
import { editRefusal } from '@/shared/gate/change-notice'
import { Refused } from '@/shared/refused'

/** Other costs for an open notice. What departments answered was to the costs of then, so that they answer again. */
export const costChangeNotice = defineCommand({
  name: 'cost-change-notice',
  input: z.strictObject({
    programme: programmeCode,
    notice: wholeNumber('The change notice', 1, 1_000_000),
    ...noticeCost,
    reason,
  }),
  load: (tx, { notice }, context) => loadNotice(tx, context, notice),
  decide(notice, { costPerBoard, costOnce, reason: why }) {
    const refused = editRefusal(notice)
    if (refused) throw new Refused(refused)
    if (notice.costPerBoard === costPerBoard && notice.costOnce === costOnce)
      throw new Refused('These are the costs it has already. Nothing was changed.')
    const before = { costPerBoard: notice.costPerBoard, costOnce: notice.costOnce }
    const after = { costPerBoard, costOnce }
    return {
      change: { number: notice.number, after },
      record: { notice: notice.number, title: notice.title, before, after, reason: why },
      result: { notice: notice.number },
    }
  },
  async apply(tx, { number, after }, { programmeId }) {
    await tx.changeNotice.update({
      where: { programmeId_number: { programmeId, number } },
      data: after,
    })
  },
})
