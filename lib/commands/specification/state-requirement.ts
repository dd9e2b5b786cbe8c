import { z } from 'zod'
import { defineCommand, loadNothing } from '@/lib/commands/command'
import { programmeCode, reason } from '@/lib/commands/inputs'
import { demandBoxes, limitOfDemand } from '@/lib/commands/specification/checked-requirement'
import { governingRequirement } from '@/shared/plan/requirement'

/** Lays one document's demand on a limit, beside what stands already. */
export const stateRequirement = defineCommand({
  name: 'state-requirement',
  input: z.strictObject({
    programme: programmeCode,
    ...demandBoxes,
    reason,
  }),
  load: loadNothing,
  decide(_nothing, input, { newId }) {
    const limit = limitOfDemand(input)
    const { programme: _, ...requirement } = { ...input, id: newId() }
    const { relaxed } = governingRequirement(limit, [{ ...requirement, lesson: null }])
    return {
      change: requirement,
      record: { ...requirement, label: limit.label, unit: limit.unit, looserThanDefault: relaxed },
    }
  },
  async apply(tx, requirement, { programmeId, actor, now }) {
    await tx.requirement.create({ data: { ...requirement, programmeId, authorId: actor.personId, at: now } })
  },
})
