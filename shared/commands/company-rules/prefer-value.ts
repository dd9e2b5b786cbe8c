import { z } from 'zod'
import { COMPANY_RULES_PLACE } from '@/shared/commands/company-rules/company-rules-place'
import { defineFace } from '@/shared/commands/face'
import { parameterName } from '@/shared/commands/named'
import { recordedValue } from '@/shared/commands/recorded-value'
import { revisionInBrief } from '@/shared/commands/specification/revision-in-brief'

export const preferValue = defineFace({
  label: 'Prefer a value for programmes to start with',
  done: 'Preferred a value for programmes to start with',
  may: { scope: 'works', of: 'company-rules', departments: ['design', 'quality'] },
  record: z.object({
    parameter: z.string(),
    value: recordedValue,
    before: recordedValue,
    reason: z.string(),
  }),
  reads: ({ parameter, value, before, reason }) => ({
    subject: parameterName(parameter),
    what: revisionInBrief(parameter, before, value),
    words: reason,
  }),
  leads: () => COMPANY_RULES_PLACE,
})
