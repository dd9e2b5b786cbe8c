import { database } from '@/lib/db/client'
import { loadCompanyPreferences, loadCompanyRules, loadRuleDecisions } from '@/lib/programme/company-rules'
import type { SignedIn } from '@/lib/auth/session'
import {
  ruleDifferences,
  undecided,
  type RuleDifference,
  type RuleStanding,
} from '@/shared/company-rules/rule-difference'

/** All company rules and preferred values, withdrawn ones too, oldest first: four statements. */
export async function readCompanyRules() {
  const [rules, preferences] = await Promise.all([
    loadCompanyRules(database()),
    loadCompanyPreferences(database()),
  ])
  return { rules, preferences }
}

/** Where a programme departs from the company rules of today; of one limit if it is named. Five statements. */
export async function readRuleDifferences(programmeId: string, limit?: string): Promise<RuleDifference[]> {
  const [rules, decisions] = await Promise.all([
    loadCompanyRules(database(), limit === undefined ? {} : { limit }),
    loadRuleDecisions(database(), [programmeId]),
  ])
  return ruleDifferences(rules, decisions.takenBy(programmeId), decisions.keptBy(programmeId))
}

/** A programme that departs from the company rules. */
export interface DifferingProgramme {
  readonly code: string
  readonly title: string
  readonly differences: readonly RuleDifference[]
}

/** The programmes that the person may read which depart from the company rules, by code: a bounded number of statements. */
export async function readDifferingProgrammes({
  personId,
  auditor,
}: Pick<SignedIn, 'personId' | 'auditor'>): Promise<DifferingProgramme[]> {
  const programmes = await database().programme.findMany({
    where: auditor ? {} : { OR: [{ leadId: personId }, { memberships: { some: { personId } } }] },
    select: { id: true, code: true, title: true },
    orderBy: { code: 'asc' },
  })
  const [rules, decisions] = await Promise.all([
    loadCompanyRules(database()),
    loadRuleDecisions(
      database(),
      programmes.map(({ id }) => id),
    ),
  ])
  return programmes
    .map(({ id, code, title }) => ({
      code,
      title,
      differences: ruleDifferences(rules, decisions.takenBy(id), decisions.keptBy(id)),
    }))
    .filter(({ differences }) => differences.length > 0)
}

/** How many company rules of today a programme has not decided on, for its route card: three statements at once. */
export async function countRuleDifferences(programmeId: string): Promise<number> {
  const [rules, requirements, kept] = await Promise.all([
    database().companyRule.findMany({ select: { id: true, replaces: true, withdrawnAt: true } }),
    database().requirement.findMany({
      where: { programmeId, withdrawnAt: null, companyRule: { not: null } },
      select: { id: true, companyRule: true },
    }),
    database().ownRuleKept.findMany({ where: { programmeId }, select: { ruleId: true, standing: true } }),
  ])
  const differences = ruleDifferences(
    rules.map(({ withdrawnAt, ...rule }) => ({ ...rule, withdrawn: withdrawnAt })),
    requirements.map(({ id, companyRule }) => ({ requirement: id, rule: companyRule ?? '' })),
    kept.map(({ ruleId, standing }) => ({ rule: ruleId, standing: standing as RuleStanding })),
  )
  return undecided(differences).length
}
