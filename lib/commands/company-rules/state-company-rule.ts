import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, line, optionalLine, reason } from '@/lib/commands/inputs'
import { limitOfDemand } from '@/lib/commands/specification/checked-requirement'
import { numberWanted } from '@/shared/columns/number-wanted'
import { companyRuleName } from '@/shared/company-rules/company-rule'
import { Refused } from '@/shared/refused'

/** States a limit that the company asks of every programme, in place of an earlier one where it names that. */
export const stateCompanyRule = defineCommand({
  name: 'state-company-rule',
  input: z.strictObject({
    limit: line('The limit'),
    value: z.number({ error: numberWanted('The limit') }),
    relaxes: z.boolean().default(false),
    document: line('The document', 120),
    edition: optionalLine('The edition', 30),
    clause: optionalLine('The clause', 80),
    reason,
    replaces: id.nullable().default(null),
  }),
  load: (tx, { limit }) => tx.companyRule.findMany({ where: { limit, withdrawnAt: null } }),
  decide(inForce, input, { newId }) {
    limitOfDemand({ ...input, authority: 'company' })
    const { limit, document, clause, replaces } = input
    if (replaces !== null && !inForce.some(({ id: key }) => key === replaces))
      throw new Refused(
        'The rule whose place it is to take does not stand any more, or is about another limit. Load the page again.',
        { replaces: 'Choose a rule that stands.' },
      )
    const twin = inForce.find(
      (rule) => rule.id !== replaces && rule.document === document && rule.clause === clause,
    )
    if (twin) {
      const message = `${companyRuleName(twin)} has a rule on this limit already. State the new one in its place.`
      throw new Refused(message, { replaces: message })
    }
    const rule = { id: newId(), ...input }
    return {
      change: rule,
      record: { rule: rule.id, ...input, limit },
      result: { rule: rule.id },
    }
  },
  async apply(tx, rule, { trailId, actor, now }) {
    const { replaces } = rule
    if (replaces !== null)
      await tx.companyRule.update({
        where: { id: replaces },
        data: { withdrawnById: actor.personId, withdrawnAt: now, withdrawnWhy: rule.reason },
      })
    await tx.companyRule.create({ data: { ...rule, trailId, statedById: actor.personId, at: now } })
  },
})
