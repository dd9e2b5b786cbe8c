import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { differenceInput, loadDifference, recordedRule } from '@/lib/commands/company-rules/load-difference'
import { reason } from '@/lib/commands/inputs'

/** The programme keeps what it has, and says why; taking the rule over later is still open to it. */
export const keepOwnRule = defineCommand({
  name: 'keep-own-rule',
  input: z.strictObject({ ...differenceInput, reason }),
  load: (tx, seen, { programmeId }) => loadDifference(tx, programmeId, seen),
  decide({ rule, standing }, { reason: why }, { newId }) {
    const kept = { id: newId(), ruleId: rule.id, standing, reason: why }
    return {
      change: kept,
      record: { kept: kept.id, ...recordedRule(rule, standing), reason: why },
    }
  },
  async apply(tx, kept, { programmeId, actor, now }) {
    await tx.ownRuleKept.create({ data: { ...kept, programmeId, byId: actor.personId, at: now } })
  },
})
