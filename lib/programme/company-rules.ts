import type { Prisma, PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { namesOf } from '@/lib/programme/names-of'
import { groupedBy } from '@/shared/grouped-by'
import type { CompanyPreference, CompanyRule } from '@/shared/company-rules/company-rule'
import { PREFERRED, type ValueKept } from '@/shared/company-rules/preference-difference'
import type { JsonValue } from '@/shared/trail/canonical-json'
import type { OwnKept, RuleStanding, RuleTaken } from '@/shared/company-rules/rule-difference'

type Db = PrismaClient | Transaction

const IN_ORDER = { orderBy: [{ at: 'asc' as const }, { id: 'asc' as const }] }

/** Company rules, withdrawn ones too, in the order in which they were stated; two statements. */
export async function loadCompanyRules(
  db: Db,
  where: Prisma.CompanyRuleWhereInput = {},
): Promise<CompanyRule[]> {
  const rows = await db.companyRule.findMany({ where, ...IN_ORDER })
  const withdrawn = await withdrawals(db, rows)
  return rows.map(({ statedById, at, trailId: _, withdrawnById, withdrawnAt, withdrawnWhy, ...rule }) => ({
    ...rule,
    stated: { byId: statedById, by: withdrawn.nameOf(statedById), at: at.toISOString() },
    withdrawn: withdrawn.of({ withdrawnById, withdrawnAt, withdrawnWhy }),
  }))
}

/** Preferred values, withdrawn ones too, in the order in which they were stated; two statements. */
export async function loadCompanyPreferences(
  db: Db,
  where: Prisma.CompanyPreferenceWhereInput = {},
): Promise<CompanyPreference[]> {
  const rows = await db.companyPreference.findMany({ where, ...IN_ORDER })
  const withdrawn = await withdrawals(db, rows)
  return rows.map(
    ({ statedById, at, trailId: _, withdrawnById, withdrawnAt, withdrawnWhy, ...preference }) => ({
      ...preference,
      value: preference.value as JsonValue,
      stated: { by: withdrawn.nameOf(statedById), at: at.toISOString() },
      withdrawn: withdrawn.of({ withdrawnById, withdrawnAt, withdrawnWhy }),
    }),
  )
}

interface Withdrawn {
  readonly withdrawnById: string | null
  readonly withdrawnAt: Date | null
  readonly withdrawnWhy: string | null
}

async function withdrawals(db: Db, rows: readonly (Withdrawn & { readonly statedById: string })[]) {
  const nameOf = await namesOf(
    db,
    rows.flatMap(({ statedById, withdrawnById }) => [statedById, withdrawnById ?? statedById]),
  )
  return {
    nameOf,
    of: ({ withdrawnById, withdrawnAt, withdrawnWhy }: Withdrawn) =>
      withdrawnById && withdrawnAt
        ? { by: nameOf(withdrawnById), at: withdrawnAt.toISOString(), why: withdrawnWhy ?? '' }
        : null,
  }
}

/** What some programmes took over of the company rules and where they keep their own, oldest first; three statements. */
export async function loadRuleDecisions(db: Db, programmeIds: readonly string[]) {
  const programmeId = { in: [...programmeIds] }
  const [taken, kept] = await Promise.all([
    db.requirement.findMany({
      where: { programmeId, withdrawnAt: null, companyRule: { not: null } },
      select: { id: true, programmeId: true, companyRule: true },
      ...IN_ORDER,
    }),
    db.ownRuleKept.findMany({ where: { programmeId, standing: { not: PREFERRED } }, ...IN_ORDER }),
  ])
  const nameOf = await namesOf(
    db,
    kept.map(({ byId }) => byId),
  )
  return {
    takenBy: (programme: string): RuleTaken[] =>
      taken
        .filter((row) => row.programmeId === programme)
        .map(({ id, companyRule }) => ({ requirement: id, rule: companyRule ?? '' })),
    keptBy: (programme: string): OwnKept[] =>
      kept
        .filter((row) => row.programmeId === programme)
        .map(({ ruleId, standing, reason, byId, at }) => ({
          rule: ruleId,
          standing: standing as RuleStanding,
          reason,
          by: nameOf(byId),
          at: at.toISOString(),
        })),
  }
}

/** Where some programmes keep values of their own against preferred ones, oldest first; two statements. */
export async function loadValuesKept(
  db: Db,
  programmeIds: readonly string[],
): Promise<ReadonlyMap<string, readonly ValueKept[]>> {
  const rows = await db.ownRuleKept.findMany({
    where: { programmeId: { in: [...programmeIds] }, standing: PREFERRED },
    ...IN_ORDER,
  })
  const nameOf = await namesOf(
    db,
    rows.map(({ byId }) => byId),
  )
  return groupedBy(
    rows,
    ({ programmeId }) => programmeId,
    ({ ruleId, reason, byId, at }) => ({
      preference: ruleId,
      reason,
      by: nameOf(byId),
      at: at.toISOString(),
    }),
  )
}
