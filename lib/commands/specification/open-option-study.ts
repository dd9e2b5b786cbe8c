import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, optionalLine, programmeCode } from '@/lib/commands/inputs'
import { loadPlanItem } from '@/lib/commands/plan/load-plan-item'
import { findParameter } from '@/shared/plan/catalogue'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

const money = (what: string) =>
  z
    .number({ error: `${what} must be a number.` })
    .min(0, `${what} is not negative.`)
    .max(1e9, `${what} is too large.`)
const alternative = z.strictObject({
  name: line('The alternative’s name', 60),
  note: optionalLine('The note', 500),
  /** What it would specify, by parameter. */
  values: z.record(z.string(), z.json()),
  costPerBoard: money('The cost per board'),
  costOnce: money('The cost once'),
})

/** Lays alternatives for a choice side by side. */
export const openOptionStudy = defineCommand({
  name: 'open-option-study',
  input: z.strictObject({
    programme: programmeCode,
    item: line('The item'),
    title: line('The question', 120),
    alternatives: z
      .array(alternative)
      .min(2, 'A study needs at least two alternatives.')
      .max(6, 'A study holds at most six alternatives.'),
  }),
  load: async (tx, { item }, { programmeId }) => ({
    item: await loadPlanItem(tx, programmeId, item),
    newest:
      (await tx.optionStudy.aggregate({ where: { programmeId }, _max: { number: true } }))._max.number ?? 0,
  }),
  decide({ item, newest }, { title, alternatives }, { newId }) {
    const names = alternatives.map(({ name }) => name.toLowerCase())
    if (new Set(names).size < names.length)
      throw new Refused('Two alternatives have the same name.', { alternatives: 'Give each its own name.' })
    const checked = alternatives.map((entry, index) => ({
      ...entry,
      values: checkedValues(entry.values, index),
    }))
    const study = {
      id: newId(),
      number: newest + 1,
      itemKey: item.definition.key,
      title,
      alternatives: checked,
    }
    return { change: study, record: study, result: { study: study.number } }
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

function checkedValues(values: Record<string, unknown>, index: number): Record<string, JsonValue> {
  const entries = Object.entries(values).map(([key, value]) => {
    const parameter = findParameter(key)
    if (!parameter) throw new Refused(`The specification has no parameter ${key}.`)
    const parsed = parameter.schema.safeParse(value)
    if (!parsed.success) {
      const says = parsed.error.issues[0]?.message ?? `${parameter.label} cannot be read.`
      throw new Refused(says, { [`alternatives.${index}.values.${key}`]: says })
    }
    return [key, JSON.parse(JSON.stringify(parsed.data)) as JsonValue] as const
  })
  return Object.fromEntries(entries)
}
