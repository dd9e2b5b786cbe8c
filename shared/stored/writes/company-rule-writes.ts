import { PREFERRED } from '@/shared/company-rules/preference-difference'
import type { JsonValue } from '@/shared/trail/canonical-json'
import type { ExpectedRows } from '../expected-rows'
import { saidList, saidObject, type Said, type SpokenEntry, type Writes } from '../spoken-entry'
import { insertRequirement } from './stated-rows'

const STANDS = { withdrawnById: null, withdrawnAt: null, withdrawnWhy: null } as const

const withdrawnBy = ({ actorId, at, said }: SpokenEntry) => ({
  withdrawnById: actorId,
  withdrawnAt: at,
  withdrawnWhy: said['reason'],
})

const stateCompanyRule: Writes = (entry, rows) => {
  const { at, actorId, said } = entry
  const replaces = said['replaces'] ?? null
  if (replaces !== null) rows.change('CompanyRule', { id: replaces }, withdrawnBy(entry))
  rows.insert('CompanyRule', {
    id: said['rule'],
    limit: said['limit'],
    value: said['value'],
    relaxes: said['relaxes'],
    document: said['document'],
    edition: said['edition'],
    clause: said['clause'],
    reason: said['reason'],
    replaces,
    statedById: actorId,
    at,
    ...STANDS,
  })
}

const withdrawCompanyRule: Writes = (entry, rows) =>
  rows.change('CompanyRule', { id: entry.said['rule'] }, withdrawnBy(entry))

const preferValue: Writes = (entry, rows) => {
  const { at, actorId, said } = entry
  const replaces = said['replaces'] ?? null
  if (replaces !== null) rows.change('CompanyPreference', { id: replaces }, withdrawnBy(entry))
  rows.insert('CompanyPreference', {
    id: said['preference'],
    parameter: said['parameter'],
    value: said['value'],
    reason: said['reason'],
    statedById: actorId,
    at,
    ...STANDS,
  })
}

const withdrawPreference: Writes = (entry, rows) =>
  rows.change('CompanyPreference', { id: entry.said['preference'] }, withdrawnBy(entry))

const takeCompanyRule: Writes = ({ at, actorId, said }, rows) => {
  const gone = said['withdrawn']
  for (const id of Array.isArray(gone) ? (gone as readonly JsonValue[]) : [])
    rows.change('Requirement', { id }, { withdrawnById: actorId, withdrawnAt: at })
  if (said['requirement'] !== null)
    insertRequirement(rows, saidObject(said['requirement']), { authorId: actorId, at })
}

const keepOwnRule: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('OwnRuleKept', {
    id: said['kept'],
    ruleId: said['rule'],
    standing: said['standing'],
    reason: said['reason'],
    byId: actorId,
    at,
  })

const keepOwnValue: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('OwnRuleKept', {
    id: said['kept'],
    ruleId: said['preference'],
    standing: PREFERRED,
    reason: said['reason'],
    byId: actorId,
    at,
  })

/** Company rules that a programme was opened with, each by who stated it. */
export function bringCompanyRules(said: Said, rows: ExpectedRows, at: string): void {
  for (const { rule, requirement, authorId, ...stated } of saidList(said['companyRules']))
    insertRequirement(rows, { ...stated, id: requirement, companyRule: rule }, { authorId, at })
}

/** What is written of company rules and preferred values, and of what programmes decide on them. */
export const COMPANY_RULE_WRITES = {
  'state-company-rule': stateCompanyRule,
  'withdraw-company-rule': withdrawCompanyRule,
  'prefer-value': preferValue,
  'withdraw-preference': withdrawPreference,
  'take-company-rule': takeCompanyRule,
  'keep-own-rule': keepOwnRule,
  'keep-own-value': keepOwnValue,
} as const
