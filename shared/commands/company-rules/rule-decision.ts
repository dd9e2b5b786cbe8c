import { z } from 'zod'
import { boundInWords, limitName } from '@/shared/commands/named'
import { companyRuleName } from '@/shared/company-rules/company-rule'
import { RULE_STANDINGS, type RuleStanding } from '@/shared/company-rules/rule-difference'

/** The company rule that a programme decided on, as the entry tells of it. */
export const ruleDecided = {
  rule: z.string(),
  standing: z.enum(RULE_STANDINGS),
  limit: z.string(),
  value: z.number(),
  document: z.string(),
  edition: z.string(),
  clause: z.string(),
} as const
type RuleDecided = z.output<z.ZodObject<typeof ruleDecided>>

const NOW: Readonly<Record<RuleStanding, string>> = {
  stated: 'stated at the works',
  withdrawn: 'withdrawn at the works',
}

/** "at most 0.25 mm, by Soldering handbook, edition 4 (withdrawn at the works)" */
export const ruleDecidedInWords = ({ limit, value, standing, ...document }: RuleDecided) => ({
  subject: limitName(limit),
  what: `${boundInWords(limit, value)}, by ${companyRuleName(document)} (${NOW[standing]})`,
})
