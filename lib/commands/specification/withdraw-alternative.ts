import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, reason } from '@/lib/commands/inputs'
import { loadOpenStudy, studyNamed } from '@/lib/commands/specification/load-study'
import { standingAlternative } from '@/lib/commands/specification/standing-alternative'
import { standing, withWithdrawn } from '@/shared/gate/study-revision'
import { Refused } from '@/shared/refused'

/** Takes one alternative of an open study out of the choice; it stays to be read. */
export const withdrawAlternative = defineCommand({
  name: 'withdraw-alternative',
  input: z.strictObject({ ...studyNamed, name: line('The alternative', 60), reason }),
  load: (tx, input, { programmeId }) => loadOpenStudy(tx, programmeId, input),
  decide(study, { name, reason: why }, { actor, now }) {
    standingAlternative(study.alternatives, name)
    if (standing(study.alternatives).length < 2)
      throw new Refused('It is the last alternative that stands. Adopt it, or add another first.')
    const deed = { byId: actor.personId, byName: actor.name, at: now, why }
    return {
      change: { id: study.id, alternatives: withWithdrawn(study.alternatives, name, deed) },
      record: { study: study.number, title: study.title, name, reason: why },
    }
  },
  async apply(tx, { id, alternatives }) {
    await tx.optionStudy.update({ where: { id }, data: { alternatives: alternatives as object } })
  },
})
