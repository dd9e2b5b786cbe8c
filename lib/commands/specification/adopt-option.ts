import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'
import { findParameter } from '@/shared/plan/catalogue'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { Refused } from '@/shared/refused'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'

interface Alternative {
  readonly name: string
  readonly values: Readonly<Record<string, JsonValue>>
}

/** Adopts one alternative of a study: its values become revisions, all with the same reason. */
export const adoptOption = defineCommand({
  name: 'adopt-option',
  input: z.strictObject({
    programme: programmeCode,
    study: wholeNumber('The study', 1, 1_000_000),
    alternative: line('The alternative', 60),
    reason,
  }),
  load: async (tx, { study }, { programmeId }) => ({
    study: await tx.optionStudy.findUnique({ where: { programmeId_number: { programmeId, number: study } } }),
    current: await tx.revision.findMany({
      where: { programmeId },
      orderBy: [{ parameter: 'asc' }, { number: 'desc' }],
      distinct: ['parameter'],
      select: { parameter: true, number: true, value: true },
    }),
  }),
  decide({ study, current }, { alternative: name, reason: why }, { actor }) {
    if (!study) throw new Refused('There is no such study in this programme.')
    if (study.adopted) throw new Refused(`Study ${study.number} is decided: “${study.adopted}” was adopted.`)
    const alternative = (study.alternatives as unknown as Alternative[]).find((entry) => entry.name === name)
    if (!alternative) throw new Refused('The study has no such alternative.')
    const revisions = Object.entries(alternative.values).flatMap(([parameter, value]) => {
      const known = findParameter(parameter)
      if (known && !actor.leads && !actor.departments.includes(known.owner)) {
        throw new Refused(
          `${known.label} belongs to ${DEPARTMENT_NAMES[known.owner].toLowerCase()}; they or the lead adopt this alternative.`,
        )
      }
      const before = current.find((revision) => revision.parameter === parameter)
      const same = before && canonicalJson(before.value as JsonValue) === canonicalJson(value)
      return same
        ? []
        : [
            {
              parameter,
              value,
              number: (before?.number ?? 0) + 1,
              before: (before?.value as JsonValue | undefined) ?? null,
            },
          ]
    })
    return {
      change: {
        id: study.id,
        name,
        why: `Option study ${study.number}, “${name}”: ${why}`,
        adoptedWhy: why,
        revisions,
      },
      record: {
        study: study.number,
        title: study.title,
        item: study.itemKey,
        adopted: name,
        reason: why,
        revisions,
      },
    }
  },
  async apply(tx, { id, name, why, adoptedWhy, revisions }, { programmeId, actor, now }) {
    await tx.optionStudy.update({
      where: { id },
      data: { adopted: name, adoptedWhy, adoptedById: actor.personId, adoptedAt: now },
    })
    await tx.revision.createMany({
      data: revisions.map(({ parameter, number, value }) => ({
        programmeId,
        parameter,
        number,
        value: value as object,
        reason: why,
        authorId: actor.personId,
        at: now,
      })),
    })
  },
})
