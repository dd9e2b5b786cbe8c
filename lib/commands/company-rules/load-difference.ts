import { z } from 'zod'
import { id, programmeCode } from '@/lib/commands/inputs'
import type { Transaction } from '@/lib/db/transaction'
import { loadCompanyRules, loadRuleDecisions } from '@/lib/programme/company-rules'
import type { CompanyRule } from '@/shared/company-rules/company-rule'
import { RULE_STANDINGS, ruleDifferences, type RuleDifference } from '@/shared/company-rules/rule-difference'
import { Refused } from '@/shared/refused'

/** The difference to a company rule that is decided on, as the person saw it. */
export const differenceInput = {
  programme: programmeCode,
  rule: id,
  standing: z.enum(RULE_STANDINGS, { error: 'Say whether the rule was stated or withdrawn.' }),
} as const

interface Seen {
  readonly rule: string
  readonly standing: RuleDifference['standing']
}

/** The programme's difference as it stands; refused where there is none of that sort any more. */
export async function loadDifference(
  tx: Transaction,
  programmeId: string,
  { rule: key, standing }: Seen,
): Promise<RuleDifference> {
  const [rules, decisions] = [await loadCompanyRules(tx), await loadRuleDecisions(tx, [programmeId])]
  const differences = ruleDifferences(rules, decisions.takenBy(programmeId), decisions.keptBy(programmeId))
  const difference = differences.find((one) => one.rule.id === key && one.standing === standing)
  if (!difference)
    throw new Refused(
      'The programme does not differ from the company rules in this any more. Load the page again.',
    )
  return difference
}

/** What an entry says of the rule that was decided on. */
export const recordedRule = (
  { id: rule, limit, value, document, edition, clause }: CompanyRule,
  standing: RuleDifference['standing'],
) => ({ rule, standing, limit, value, document, edition, clause })
