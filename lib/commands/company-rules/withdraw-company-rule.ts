import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, reason } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

/** Programmes that took it over are shown that it does not stand any more; nothing of theirs changes by itself. */
export const withdrawCompanyRule = defineCommand({
  name: 'withdraw-company-rule',
  input: z.strictObject({ rule: id, reason }),
  load: (tx, { rule }) => tx.companyRule.findFirst({ where: { id: rule, withdrawnAt: null } }),
  decide(rule, { reason: why }) {
    if (!rule) throw new Refused('This company rule does not stand any more.')
    const { id: key, limit, value, document, edition, clause } = rule
    return {
      change: { id: key, why },
      record: { rule: key, limit, value, document, edition, clause, reason: why },
    }
  },
  async apply(tx, { id: key, why }, { actor, now }) {
    await tx.companyRule.update({
      where: { id: key },
      data: { withdrawnById: actor.personId, withdrawnAt: now, withdrawnWhy: why },
    })
  },
})
