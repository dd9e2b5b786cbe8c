import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { department, line, optionalLine, programmeCode, sha256Hex } from '@/lib/commands/inputs'
import { approvalOf } from '@/lib/commands/signatures/approval-record'
import { itemNamed, loadJudged } from '@/lib/commands/signatures/load-judged'
import { Refused } from '@/shared/refused'

/**
 * A department agrees to an item as it stands. `digest` is what the person had
 * before them: when the item has changed since, they are asked to look again.
 */
export const approveItem = defineCommand({
  name: 'approve-item',
  input: z.strictObject({
    programme: programmeCode,
    item: line('The item'),
    department,
    digest: sha256Hex,
    comment: optionalLine('The comment', 1000),
  }),
  async load(tx, { item }, context) {
    const judged = await loadJudged(tx, context)
    return { itemState: itemNamed(judged, item), ...judged }
  },
  subject: ({ itemState, state }, { department: own }) => ({ department: own, item: itemState, state }),
  decide({ itemState, judgement }, { department: own, digest, comment }, { newId }) {
    if (itemState.digest !== digest)
      throw new Refused('The item changed since you opened it. Read it again before you sign.')
    const { row, record } = approvalOf({ judgement }, { id: newId(), itemState, department: own, comment })
    return { change: row, record }
  },
  async apply(tx, approval, { programmeId, actor, now }) {
    await tx.approval.create({
      data: { ...approval, programmeId, personId: actor.personId, personName: actor.name, at: now },
    })
  },
})
