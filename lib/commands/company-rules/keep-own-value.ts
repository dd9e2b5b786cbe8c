import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, programmeCode, reason } from '@/lib/commands/inputs'
import { parameterNamed } from '@/lib/commands/specification/checked-value'
import { loadCompanyPreferences } from '@/lib/programme/company-rules'
import { preferenceDifferences, PREFERRED } from '@/shared/company-rules/preference-difference'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** The programme keeps the value it specified, and says why; another preference of the works is another question. */
export const keepOwnValue = defineCommand({
  name: 'keep-own-value',
  input: z.strictObject({ programme: programmeCode, preference: id, reason }),
  async load(tx, { preference: key }, { programmeId }) {
    const [preference] = await loadCompanyPreferences(tx, { id: key })
    if (!preference) throw new Refused('The works prefer no such value. Load the page again.')
    const specified = await tx.revision.findFirst({
      where: { programmeId, parameter: preference.parameter },
      orderBy: { number: 'desc' },
      select: { parameter: true, number: true, value: true },
    })
    const [difference] = preferenceDifferences([preference], specified ? [specified] : [], [])
    return { parameter: parameterNamed(preference.parameter), difference }
  },
  subject: ({ parameter }) => parameter,
  decide({ parameter, difference }, { preference, reason: why }, { newId }) {
    if (!difference)
      throw new Refused(
        `${parameter.label} does not differ from what the works prefer any more. Load the page again.`,
      )
    const kept = { id: newId(), ruleId: preference, standing: PREFERRED, reason: why }
    return {
      change: kept,
      record: {
        kept: kept.id,
        preference,
        parameter: parameter.key,
        preferred: difference.preference.value,
        own: difference.here.value as JsonValue,
        revision: difference.here.number,
        reason: why,
      },
    }
  },
  async apply(tx, kept, { programmeId, actor, now }) {
    await tx.ownRuleKept.create({ data: { ...kept, programmeId, byId: actor.personId, at: now } })
  },
})
