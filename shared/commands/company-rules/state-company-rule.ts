import { z } from 'zod'
import { COMPANY_RULES_PLACE } from '@/shared/commands/company-rules/company-rules-place'
import { defineFace } from '@/shared/commands/face'
import { boundInWords, limitName } from '@/shared/commands/named'
import { companyRuleName } from '@/shared/company-rules/company-rule'

export const stateCompanyRule = defineFace({
  label: 'State a company rule',
  done: 'Stated a company rule',
  may: { scope: 'works', of: 'company-rules', departments: ['quality'] },
  record: z.object({
    limit: z.string(),
    value: z.number(),
    relaxes: z.boolean(),
    document: z.string(),
    edition: z.string(),
    clause: z.string(),
    reason: z.string(),
    /** The rule whose place it takes. */
    replaces: z.string().nullable(),
  }),
  reads: ({ limit, value, relaxes, reason, replaces, ...document }) => ({
    subject: limitName(limit),
    what: [
      boundInWords(limit, value),
      ...(relaxes ? ['relaxes those below it'] : []),
      `by ${companyRuleName(document)}`,
      ...(replaces === null ? [] : ['in place of an earlier rule']),
    ].join(', '),
    words: reason,
  }),
  leads: () => COMPANY_RULES_PLACE,
})
