import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { reason } from '@/lib/commands/inputs'
import {
  alternativeInput,
  checkedAlternative,
  refuseAt,
  sameName,
} from '@/lib/commands/specification/alternative-input'
import { loadOpenStudy, loadStudyGround, studyNamed } from '@/lib/commands/specification/load-study'
import { recordable } from '@/lib/commands/recordable'
import { comparedWith, standing, withAdded } from '@/shared/gate/study-revision'
import { Refused } from '@/shared/refused'

const MOST_STANDING = 6
const MOST_EVER = 20

/** Puts one more alternative into an open study. */
export const addAlternative = defineCommand({
  name: 'add-alternative',
  input: z.strictObject({ ...studyNamed, alternative: alternativeInput, reason }),
  load: async (tx, input, { programmeId }) => ({
    study: await loadOpenStudy(tx, programmeId, input),
    ...(await loadStudyGround(tx, programmeId)),
  }),
  decide({ study, today, answered }, { alternative, reason: why }, { actor, now }) {
    const { alternatives } = study
    if (standing(alternatives).length >= MOST_STANDING)
      throw new Refused(
        `A study holds at most six alternatives. Withdraw one, or open a study of its own for this one.`,
      )
    if (alternatives.length >= MOST_EVER)
      throw new Refused('This study has been revised so often that a new one is easier to read. Open one.')
    if (alternatives.some(({ name }) => sameName(name, alternative.name)))
      refuseAt('alternative.name', 'Another alternative of the study has, or had, this name.')
    const checked = checkedAlternative(alternative, 'alternative', answered)
    const { values, written } = comparedWith(alternatives, checked.values, today)
    const content = { ...checked, values }
    const deed = { byId: actor.personId, byName: actor.name, at: now, why }
    return {
      change: { id: study.id, alternatives: withAdded(alternatives, content, written, deed) },
      record: {
        study: study.number,
        title: study.title,
        alternative: recordable(content),
        written: { ...written },
        reason: why,
      },
    }
  },
  async apply(tx, { id, alternatives }) {
    await tx.optionStudy.update({ where: { id }, data: { alternatives: alternatives as object } })
  },
})
