import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { differenceInput, loadDifference, recordedRule } from '@/lib/commands/company-rules/load-difference'
import { limitOfDemand } from '@/lib/commands/specification/checked-requirement'
import { requirementOfRule } from '@/shared/company-rules/company-rule'

/** Lays a company rule on its limit, or takes a withdrawn one off; what it replaces goes with it. */
export const takeCompanyRule = defineCommand({
  name: 'take-company-rule',
  input: z.strictObject(differenceInput),
  load: (tx, seen, { programmeId }) => loadDifference(tx, programmeId, seen),
  decide({ rule, standing, goes }, _seen, { newId }) {
    const requirement =
      standing === 'stated' ? { id: newId(), ...requirementOfRule(rule), companyRule: rule.id } : null
    if (requirement) limitOfDemand(requirement)
    const withdrawn = goes.map((taken) => taken.requirement)
    return {
      change: { requirement, withdrawn },
      record: { ...recordedRule(rule, standing), requirement, withdrawn },
    }
  },
  async apply(tx, { requirement, withdrawn }, { programmeId, actor, now }) {
    await tx.requirement.updateMany({
      where: { programmeId, id: { in: withdrawn } },
      data: { withdrawnById: actor.personId, withdrawnAt: now },
    })
    if (requirement)
      await tx.requirement.create({
        data: { ...requirement, programmeId, authorId: actor.personId, at: now },
      })
  },
})
