import { z } from 'zod'
import { defineCommand, loadNothing } from '@/lib/commands/command'
import { line, optionalLine, programmeCode, reason } from '@/lib/commands/inputs'
import { findLimit } from '@/shared/catalogue/standard-plan'
import { numberWanted } from '@/shared/columns/number-wanted'
import { impossibleLimit } from '@/shared/plan/limit-range'
import { AUTHORITIES, governingRequirement } from '@/shared/plan/requirement'
import { Refused } from '@/shared/refused'

/** Lays one document's demand on a limit, beside what stands already. */
export const stateRequirement = defineCommand({
  name: 'state-requirement',
  input: z.strictObject({
    programme: programmeCode,
    limit: line('The limit'),
    authority: z.enum(AUTHORITIES, { error: 'Choose where the demand comes from.' }),
    document: line('The document', 160),
    clause: optionalLine('The clause', 80),
    value: z.number({ error: numberWanted('The limit') }),
    relaxes: z.boolean().default(false),
    reason,
  }),
  load: loadNothing,
  decide(_nothing, input, { newId }) {
    const limit = findLimit(input.limit)
    if (!limit) throw new Refused('There is no such limit.')
    const impossible = impossibleLimit(limit, input.value)
    if (impossible) throw new Refused(impossible, { value: impossible })
    if (input.authority === 'common practice' && input.relaxes) {
      throw new Refused('Common practice cannot permit what a higher authority forbids.', {
        relaxes: 'Only a company rule, a standard or the customer can relax a limit.',
      })
    }
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
