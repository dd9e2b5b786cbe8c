import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, reason } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** Programmes opened from here on start without it; those that did start with it keep their value. */
export const withdrawPreference = defineCommand({
  name: 'withdraw-preference',
  input: z.strictObject({ preference: id, reason }),
  load: (tx, { preference }) =>
    tx.companyPreference.findFirst({ where: { id: preference, withdrawnAt: null } }),
  decide(preference, { reason: why }) {
    if (!preference) throw new Refused('This preference does not stand any more.')
    const { id: key, parameter, value } = preference
    return {
      change: { id: key, why },
      record: { preference: key, parameter, value: value as JsonValue, reason: why },
    }
  },
  async apply(tx, { id: key, why }, { actor, now }) {
    await tx.companyPreference.update({
      where: { id: key },
      data: { withdrawnById: actor.personId, withdrawnAt: now, withdrawnWhy: why },
    })
  },
})
