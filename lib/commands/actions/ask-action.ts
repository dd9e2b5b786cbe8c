import { z } from 'zod'
import { applyOrigin, loadOrigin, originInput } from '@/lib/commands/actions/action-origin'
import { defineCommand } from '@/lib/commands/command'
import { department, id, line, paragraph, programmeCode, wholeNumber } from '@/lib/commands/inputs'
import { loadPlanItem } from '@/lib/commands/plan/load-plan-item'
import { Prisma } from '@/lib/db/generated/client'
import { ACTION_KINDS } from '@/shared/gate/programme-state'
import { calendarDate } from '@/shared/columns/calendar-date'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { Refused } from '@/shared/refused'

/**
 * One department asks another about an item, or one person of it; the item is
 * short until the answer is accepted. Asked within an open study, its amounts
 * are what the study's alternatives cost.
 */
export const askAction = defineCommand({
  name: 'ask-action',
  input: z.strictObject({
    programme: programmeCode,
    item: line('The item'),
    from: department,
    to: department,
    person: id.nullable().default(null),
    study: wholeNumber('The study', 1, 1_000_000).nullable().default(null),
    kind: z.enum(ACTION_KINDS, { error: 'Choose what is asked: cost, feasibility, samples or information.' }),
    question: paragraph('The question'),
    dueOn: calendarDate('The due date'),
    bornOf: originInput,
  }),
  load: async (tx, { item, person, study, bornOf }, { programmeId, newId }) => ({
    origin: await loadOrigin(tx, bornOf, { programmeId, newId }),
    item: await loadPlanItem(tx, programmeId, item),
    newest: (await tx.action.aggregate({ where: { programmeId }, _max: { number: true } }))._max.number ?? 0,
    belongsTo: person
      ? (
          await tx.membership.findMany({
            where: { programmeId, personId: person },
            select: { department: true },
          })
        ).map((membership) => membership.department)
      : [],
    named:
      person === null ? null : await tx.person.findUnique({ where: { id: person }, select: { name: true } }),
    study:
      study === null
        ? null
        : await tx.optionStudy.findUnique({
            where: { programmeId_number: { programmeId, number: study } },
            select: { adopted: true },
          }),
  }),
  subject: (_state, { from }) => ({ from }),
  decide({ item, newest, belongsTo, named, study, origin }, input, { newId, today }) {
    const { from, to, person, kind, question, dueOn } = input
    if (from === to)
      throw new Refused('An action goes to another department.', { to: 'Choose another department.' })
    if (dueOn < today)
      throw new Refused('The due date has passed already.', { dueOn: 'Choose a day that is still to come.' })
    if (person && !belongsTo.includes(to)) {
      const message = `Whom you name does not belong to ${DEPARTMENT_NAMES[to].toLowerCase()} in this programme.`
      throw new Refused(message, { person: message })
    }
    if (input.study && !study) throw new Refused('There is no such study in this programme.')
    if (study && study.adopted)
      throw new Refused(`Study ${input.study} is decided: “${study.adopted}” was adopted. Ask outside it.`)
    const action = {
      id: newId(),
      number: newest + 1,
      itemKey: item.definition.key,
      from,
      to,
      askedOfId: person,
      study: input.study,
      kind,
      question,
      dueOn,
    }
    return {
      change: { ...action, bornOf: origin },
      record: { ...action, askedOf: named?.name ?? null, bornOf: origin },
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
