import { database } from '@/lib/db/client'
import {
  loadCompanyPreferences,
  loadCompanyRules,
  loadRuleDecisions,
  loadValuesKept,
} from '@/lib/programme/company-rules'
import {
  preferenceDifferences,
  type PreferenceDifference,
} from '@/shared/company-rules/preference-difference'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { groupedBy } from '@/shared/grouped-by'
import { sameValue } from '@/shared/plan/same-value'
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

/** Where a programme specified a value otherwise than the works prefer it; six statements at the most. */
export async function readPreferenceDifferences({
  programme,
  revisions,
}: Pick<ProgrammeState, 'programme' | 'revisions'>): Promise<PreferenceDifference[]> {
  const [preferences, kept] = await Promise.all([
    loadCompanyPreferences(database(), { withdrawnAt: null }),
    loadValuesKept(database(), [programme.id]),
  ])
  return preferenceDifferences(preferences, [...revisions.values()], kept.get(programme.id) ?? [])
}

/** A programme that departs from the company rules, or from the preferred values. */
export interface DifferingProgramme {
  readonly code: string
  readonly title: string
  readonly differences: readonly RuleDifference[]
  readonly values: readonly PreferenceDifference[]
}

type CompanyAsks = Awaited<ReturnType<typeof readCompanyRules>>

/**
 * The programmes that the person may read which depart from what the company asks and prefers, by code: a bounded number
 * of statements.
 */
export async function readDifferingProgrammes(
  { personId, auditor }: Pick<SignedIn, 'personId' | 'auditor'>,
  { rules, preferences: all }: CompanyAsks,
): Promise<DifferingProgramme[]> {
  const preferences = all.filter(({ withdrawn }) => withdrawn === null)
  const programmes = await database().programme.findMany({
    where: auditor ? {} : { OR: [{ leadId: personId }, { memberships: { some: { personId } } }] },
    select: { id: true, code: true, title: true },
    orderBy: { code: 'asc' },
  })
  const ids = programmes.map(({ id }) => id)
  const [decisions, kept, specified] = await Promise.all([
    loadRuleDecisions(database(), ids),
    loadValuesKept(database(), ids),
    newestValues(
      ids,
      preferences.map(({ parameter }) => parameter),
    ),
  ])
  return programmes
    .map(({ id, code, title }) => ({
      code,
      title,
      differences: ruleDifferences(rules, decisions.takenBy(id), decisions.keptBy(id)),
      values: preferenceDifferences(preferences, specified.get(id) ?? [], kept.get(id) ?? []),
    }))
    .filter(({ differences, values }) => differences.length + values.length > 0)
}

/** What some programmes specify of some parameters; one statement. */
async function newestValues(programmeIds: readonly string[], parameters: readonly string[]) {
  const rows = await database().revision.findMany({
    where: { programmeId: { in: [...programmeIds] }, parameter: { in: [...parameters] } },
    orderBy: [{ programmeId: 'asc' }, { parameter: 'asc' }, { number: 'desc' }],
    distinct: ['programmeId', 'parameter'],
    select: { programmeId: true, parameter: true, number: true, value: true },
  })
  return groupedBy(rows, ({ programmeId }) => programmeId)
}

/** How many company rules and preferred values of today a programme has not decided on, for its route card: four statements at once. */
export async function countRuleDifferences({
  programme: { id: programmeId },
  facts: { values },
}: Pick<ProgrammeState, 'programme' | 'facts'>): Promise<number> {
  const [rules, requirements, kept, preferences] = await Promise.all([
    database().companyRule.findMany({ select: { id: true, replaces: true, withdrawnAt: true } }),
    database().requirement.findMany({
      where: { programmeId, withdrawnAt: null, companyRule: { not: null } },
      select: { id: true, companyRule: true },
    }),
    database().ownRuleKept.findMany({ where: { programmeId }, select: { ruleId: true, standing: true } }),
    database().companyPreference.findMany({
      where: { withdrawnAt: null },
      select: { id: true, parameter: true, value: true },
    }),
  ])
  const otherValues = preferences.filter(
    ({ id, parameter, value }) =>
      values.has(parameter) &&
      !sameValue(values.get(parameter), value) &&
      !kept.some(({ ruleId }) => ruleId === id),
  )
  const differences = ruleDifferences(
    rules.map(({ withdrawnAt, ...rule }) => ({ ...rule, withdrawn: withdrawnAt })),
    requirements.map(({ id, companyRule }) => ({ requirement: id, rule: companyRule ?? '' })),
    kept.map(({ ruleId, standing }) => ({ rule: ruleId, standing: standing as RuleStanding })),
  )
  return undecided(differences).length + otherValues.length
}
