import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { jsonValue, line, optionalLine, programmeCode, wholeNumber } from '@/lib/commands/inputs'
import { loadPlanItem } from '@/lib/commands/plan/load-plan-item'
import { currentValues } from '@/lib/commands/specification/current-values'
import { comparedValues } from '@/shared/gate/option-study'
import { findParameter } from '@/shared/catalogue/standard-plan'
import { numberWanted } from '@/shared/columns/number-wanted'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

const money = (what: string) =>
  z
    .number({ error: numberWanted(what) })
    .min(0, `${what} is not negative.`)
    .max(1e9, `${what} is too large.`)
const alternative = z.strictObject({
  name: line('The alternative’s name', 60),
  note: optionalLine('The note', 500),
  /** What it would specify, by parameter; left out, it stays as it is today. */
  values: z.record(z.string(), jsonValue),
  costPerBoard: money('The cost per board'),
  costOnce: money('The cost once'),
  defectsPerMillion: z
    .number({ error: 'The defects expected must be a number.' })
    .min(0, 'Defects expected lie between 0 and 1 000 000 per million joints.')
    .max(1e6, 'Defects expected lie between 0 and 1 000 000 per million joints.')
    .nullable()
    .default(null),
  /** Numbers of the answered actions it rests on. */
  actions: z
    .array(wholeNumber('The action', 1, 1_000_000))
    .max(20, 'It rests on at most 20 actions.')
    .default([]),
})
type Alternative = z.infer<typeof alternative>

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
    today: await currentValues(tx, programmeId),
    answered: await tx.action.findMany({
      where: { programmeId, answeredAt: { not: null } },
      select: { number: true },
    }),
    newest:
      (await tx.optionStudy.aggregate({ where: { programmeId }, _max: { number: true } }))._max.number ?? 0,
  }),
  decide({ item, today, answered, newest }, { title, alternatives }, { newId }) {
    refuseSameNames(alternatives)
    const known = new Set(answered.map(({ number }) => number))
    alternatives.forEach(({ actions }, index) => {
      const unanswered = actions.find((number) => !known.has(number))
      if (unanswered !== undefined)
        refuseAt(
          `alternatives.${index}.actions`,
          `Action ${unanswered} is not answered in this programme; an alternative rests on answers only.`,
        )
    })
    const values = comparedValues(
      alternatives.map((entry, index) => checkedValues(entry.values, index)),
      new Map([...today].map(([parameter, { value }]) => [parameter, value])),
    )
    const study = {
      id: newId(),
      number: newest + 1,
      itemKey: item.definition.key,
      title,
      alternatives: alternatives.map((entry, index) => ({ ...entry, values: values[index] ?? {} })),
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

function refuseAt(field: string, message: string): never {
  throw new Refused(message, { [field]: message })
}

function refuseSameNames(alternatives: readonly Alternative[]): void {
  const names = alternatives.map(({ name }) => name.toLowerCase())
  const second = names.findIndex((name, index) => names.indexOf(name) < index)
  if (second >= 0)
    refuseAt(`alternatives.${second}.name`, 'Another alternative has this name. Give each its own.')
}

function checkedValues(values: Readonly<Record<string, unknown>>, index: number): Record<string, JsonValue> {
  const entries = Object.entries(values).map(([key, value]) => {
    const place = `alternatives.${index}.values.${key}`
    const parameter = findParameter(key)
    if (!parameter) refuseAt(place, `The specification has no parameter ${key}.`)
    const parsed = parameter.schema.safeParse(value)
    if (!parsed.success) {
      const fields = Object.fromEntries(
        parsed.error.issues.map(({ path, message }) => [[place, ...path.map(String)].join('.'), message]),
      )
      throw new Refused(Object.values(fields)[0] ?? `${parameter.label} cannot be read.`, fields)
    }
    return [key, JSON.parse(JSON.stringify(parsed.data)) as JsonValue] as const
  })
  return Object.fromEntries(entries)
}
