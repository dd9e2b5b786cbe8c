import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, reason } from '@/lib/commands/inputs'
import {
  alternativeInput,
  checkedAlternative,
  refuseAt,
  sameName,
} from '@/lib/commands/specification/alternative-input'
import { loadOpenStudy, loadStudyGround, studyNamed } from '@/lib/commands/specification/load-study'
import { standingAlternative } from '@/lib/commands/specification/standing-alternative'
import { recordable } from '@/lib/commands/recordable'
import { contentOf } from '@/shared/gate/option-alternative'
import { comparedWith, withChanged } from '@/shared/gate/study-revision'
import { Refused } from '@/shared/refused'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'

/** Says anew what one alternative of an open study is; answers that name it go on naming it by its own name. */
export const changeAlternative = defineCommand({
  name: 'change-alternative',
  input: z.strictObject({
    ...studyNamed,
    name: line('The alternative', 60),
    alternative: alternativeInput,
    reason,
  }),
  load: async (tx, input, { programmeId }) => ({
    study: await loadOpenStudy(tx, programmeId, input),
    ...(await loadStudyGround(tx, programmeId)),
  }),
  decide({ study, today, answered }, { name, alternative, reason: why }, { actor, now }) {
    const before = standingAlternative(study.alternatives, name)
    if (!sameName(alternative.name, name))
      refuseAt('alternative.name', 'Answers go by the name. Add another alternative and withdraw this one.')
    const checked = checkedAlternative({ ...alternative, name }, 'alternative', answered)
    const others = study.alternatives.filter((one) => one !== before)
    const { values, written } = comparedWith(others, checked.values, today)
    const content = { ...checked, values }
    if (asText(content) === asText(contentOf(before)) && before.drawsOnAnswers)
      throw new Refused('This is what the alternative says already. Nothing was changed.')
    const deed = { byId: actor.personId, byName: actor.name, at: now, why }
    return {
      change: {
        id: study.id,
        alternatives: withChanged(study.alternatives, name, content, written, deed),
      },
      record: {
        study: study.number,
        title: study.title,
        name,
        before: recordable(contentOf(before)),
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

const asText = (value: unknown): string => canonicalJson(recordable(value) as JsonValue)
