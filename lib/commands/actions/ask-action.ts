import { z } from 'zod'
import { applyOrigin, loadOrigin, originInput } from '@/lib/commands/actions/action-origin'
import { defineCommand } from '@/lib/commands/command'
import { department, line, paragraph, programmeCode } from '@/lib/commands/inputs'
import { loadPlanItem } from '@/lib/commands/plan/load-plan-item'
import { Prisma } from '@/lib/db/generated/client'
import { ACTION_KINDS } from '@/shared/gate/programme-state'
import { calendarDate } from '@/shared/columns/calendar-date'
import { Refused } from '@/shared/refused'

/** One department asks another about an item; the item is short until the answer is accepted. */
export const askAction = defineCommand({
  name: 'ask-action',
  input: z.strictObject({
    programme: programmeCode,
    item: line('The item'),
    from: department,
    to: department,
    kind: z.enum(ACTION_KINDS, { error: 'Choose what is asked: cost, feasibility, samples or information.' }),
    question: paragraph('The question'),
    dueOn: calendarDate('The due date'),
    bornOf: originInput,
  }),
  load: async (tx, { item, bornOf }, { programmeId, newId }) => ({
    origin: await loadOrigin(tx, bornOf, { programmeId, newId }),
    item: await loadPlanItem(tx, programmeId, item),
    newest: (await tx.action.aggregate({ where: { programmeId }, _max: { number: true } }))._max.number ?? 0,
  }),
  subject: (_item, { from }) => ({ from }),
  decide({ item, newest, origin }, { from, to, kind, question, dueOn }, { newId, today }) {
    if (from === to)
      throw new Refused('An action goes to another department.', { to: 'Choose another department.' })
    if (dueOn < today)
      throw new Refused('The due date has passed already.', { dueOn: 'Choose a day that is still to come.' })
    const action = {
      id: newId(),
      number: newest + 1,
      itemKey: item.definition.key,
      from,
      to,
      kind,
      question,
      dueOn,
    }
    return {
      change: { ...action, bornOf: origin },
      record: { ...action, bornOf: origin },
      result: { action: action.number },
    }
  },
  async apply(tx, action, { programmeId, actor, now }) {
    await tx.action.create({
      data: {
        ...action,
        bornOf: action.bornOf ?? Prisma.DbNull,
        programmeId,
        askedById: actor.personId,
        askedAt: now,
      },
    })
    await applyOrigin(tx, action.bornOf, action, { programmeId, personId: actor.personId, now })
  },
})
