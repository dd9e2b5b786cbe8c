import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, programmeCode } from '@/lib/commands/inputs'
import { loadPlanItem } from '@/lib/commands/plan/load-plan-item'
import {
  alternativeInput,
  checkedAlternative,
  refuseAt,
  sameName,
} from '@/lib/commands/specification/alternative-input'
import { loadStudyGround } from '@/lib/commands/specification/load-study'
import { recordable } from '@/lib/commands/recordable'
import { openedWith } from '@/shared/gate/option-alternative'
import { comparedValues } from '@/shared/gate/option-study'

/** Lays alternatives for a choice side by side; they may change values of any items. */
export const openOptionStudy = defineCommand({
  name: 'open-option-study',
  input: z.strictObject({
    programme: programmeCode,
    item: line('The item'),
    title: line('The question', 120),
    alternatives: z
      .array(alternativeInput)
      .min(2, 'A study needs at least two alternatives.')
      .max(6, 'A study holds at most six alternatives.'),
  }),
  load: async (tx, { item }, { programmeId }) => ({
    item: await loadPlanItem(tx, programmeId, item),
    ...(await loadStudyGround(tx, programmeId)),
    newest:
      (await tx.optionStudy.aggregate({ where: { programmeId }, _max: { number: true } }))._max.number ?? 0,
  }),
  decide({ item, today, answered, newest }, { title, alternatives }, { newId }) {
    const second = alternatives.findIndex(({ name }, index) =>
      alternatives.slice(0, index).some((other) => sameName(other.name, name)),
    )
    if (second >= 0)
      refuseAt(`alternatives.${second}.name`, 'Another alternative has this name. Give each its own.')
    const checked = alternatives.map((given, index) =>
      checkedAlternative(given, `alternatives.${index}`, answered),
    )
    const values = comparedValues(
      checked.map((one) => one.values),
      today,
    )
    const study = {
      id: newId(),
      number: newest + 1,
      itemKey: item.definition.key,
      title,
      alternatives: checked.map((one, index) => openedWith({ ...one, values: values[index] ?? {} })),
    }
    return { change: study, record: recordable(study), result: { study: study.number } }
  },
  async apply(tx, study, { programmeId, actor, now }) {
    await tx.optionStudy.create({
      data: {
        ...study,
        alternatives: study.alternatives as object,
        programmeId,
        openedById: actor.personId,
        openedAt: now,
      },
    })
  },
})
