import { z } from 'zod'
import { COMPANY_RULES_PLACE } from '@/shared/commands/company-rules/company-rules-place'
import { defineFace } from '@/shared/commands/face'
import { boundInWords, limitName } from '@/shared/commands/named'
import { companyRuleName } from '@/shared/company-rules/company-rule'

export const withdrawCompanyRule = defineFace({
  label: 'Withdraw a company rule',
  done: 'Withdrew a company rule',
  may: { scope: 'works', of: 'company-rules', departments: ['quality'] },
  record: z.object({
    limit: z.string(),
    value: z.number(),
    document: z.string(),
    edition: z.string(),
    clause: z.string(),
    reason: z.string(),
  }),
  reads: ({ limit, value, reason, ...document }) => ({
    subject: limitName(limit),
    what: `${boundInWords(limit, value)}, by ${companyRuleName(document)}`,
    words: reason,
  }),
  leads: () => COMPANY_RULES_PLACE,
})
