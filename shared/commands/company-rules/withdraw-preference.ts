import { z } from 'zod'
import { COMPANY_RULES_PLACE } from '@/shared/commands/company-rules/company-rules-place'
import { defineFace } from '@/shared/commands/face'
import { parameterName, valueInBrief } from '@/shared/commands/named'
import { recordedValue } from '@/shared/commands/recorded-value'

export const withdrawPreference = defineFace({
  label: 'Withdraw a preferred value',
  done: 'Withdrew a preferred value',
  may: { scope: 'works', of: 'company-rules', departments: ['design', 'quality'] },
  record: z.object({ parameter: z.string(), value: recordedValue, reason: z.string() }),
  reads: ({ parameter, value, reason }) => ({
    subject: parameterName(parameter),
    what: valueInBrief(parameter, value),
    words: reason,
  }),
  leads: () => COMPANY_RULES_PLACE,
})
