import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'
import { loadPlanItem } from '@/lib/commands/plan/load-plan-item'
import { currentValues } from '@/lib/commands/specification/current-values'
import { changesOf, type OptionAlternative } from '@/shared/gate/option-study'
import { findParameter } from '@/shared/catalogue/standard-plan'
import { givenByAdoption } from '@/shared/plan/given-reasons'
import { Refused } from '@/shared/refused'

/**
 * Adopts one alternative of a study: its values become revisions, all with the
 * same reason. `seen` holds the revision of each compared parameter that the
 * person had before them (0 for none): when another came between, the study
 * has to be read again, for it may give something else now.
 */
export const adoptOption = defineCommand({
  name: 'adopt-option',
  input: z.strictObject({
    programme: programmeCode,
    study: wholeNumber('The study', 1, 1_000_000),
    alternative: line('The alternative', 60),
    seen: z.record(z.string(), wholeNumber('The revision', 0, 1_000_000)),
    reason,
  }),
  load: async (tx, { study: number, alternative: name }, { programmeId }) => {
    const study = await tx.optionStudy.findUnique({ where: { programmeId_number: { programmeId, number } } })
    if (!study) throw new Refused('There is no such study in this programme.')
    if (study.adopted) throw new Refused(`Study ${study.number} is decided: “${study.adopted}” was adopted.`)
    const alternatives = study.alternatives as unknown as OptionAlternative[]
    const alternative = alternatives.find((entry) => entry.name === name)
    if (!alternative)
      throw new Refused('The study has no such alternative.', {
        alternative: 'Choose one of the alternatives.',
      })
    const current = await currentValues(tx, programmeId)
    const today = new Map([...current].map(([parameter, { value }]) => [parameter, value]))
    const item = await loadPlanItem(tx, programmeId, study.itemKey)
    return { study, alternative, current, item: item.definition, changes: changesOf(alternative, today) }
  },
  subject: ({ item, changes }) => ({ item, changes }),
  decide({ study, alternative, current, changes }, { alternative: name, seen, reason: why }) {
    const moved = Object.keys(alternative.values).find(
      (key) => (seen[key] ?? 0) !== (current.get(key)?.number ?? 0),
    )
    if (moved)
      throw new Refused(
        `${findParameter(moved)?.label ?? moved} was revised since you read the study, so that it may give something else now. Load the page again, read it, and then adopt.`,
      )
    const revisions = [...changes].map(([parameter, value]) => {
      const before = current.get(parameter)
      return { parameter, value, number: (before?.number ?? 0) + 1, before: before?.value ?? null }
    })
    return {
      change: {
        id: study.id,
        name,
        why: givenByAdoption(study.number, name, why),
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
