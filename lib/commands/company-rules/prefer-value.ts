import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { jsonValue, line, reason } from '@/lib/commands/inputs'
import { checkedValue, parameterNamed } from '@/lib/commands/specification/checked-value'
import { ASKED_AT_OPENING } from '@/shared/plan/parameters/programme'
import { Refused } from '@/shared/refused'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'

/** Prefers a value, in place of the one preferred before; programmes opened from here on start with it. */
export const preferValue = defineCommand({
  name: 'prefer-value',
  input: z.strictObject({ parameter: line('The parameter'), value: jsonValue, reason }),
  load: async (tx, { parameter: key }) => ({
    parameter: parameterNamed(key),
    before: await tx.companyPreference.findFirst({ where: { parameter: key, withdrawnAt: null } }),
  }),
  decide({ parameter, before }, { value, reason: why }, { newId }) {
    if (ASKED_AT_OPENING.some(({ key }) => key === parameter.key)) {
      const message = `${parameter.label} is asked for when a programme is opened, so none starts with a preferred one.`
      throw new Refused(message, { parameter: message })
    }
    const clean = checkedValue(parameter, value)
    if (before && canonicalJson(before.value as JsonValue) === canonicalJson(clean))
      throw new Refused('This is the value preferred already. Nothing was changed.')
    const preference = { id: newId(), parameter: parameter.key, value: clean, reason: why }
    return {
      change: { preference, replaces: before?.id ?? null },
      record: {
        preference: preference.id,
        parameter: parameter.key,
        value: clean,
        before: (before?.value as JsonValue | undefined) ?? null,
        replaces: before?.id ?? null,
        reason: why,
      },
      result: { preference: preference.id },
    }
  },
  async apply(tx, { preference, replaces }, { trailId, actor, now }) {
    if (replaces !== null)
      await tx.companyPreference.update({
        where: { id: replaces },
        data: { withdrawnById: actor.personId, withdrawnAt: now, withdrawnWhy: preference.reason },
      })
    await tx.companyPreference.create({
      data: {
        ...preference,
        value: preference.value as object,
        trailId,
        statedById: actor.personId,
        at: now,
      },
    })
  },
})
