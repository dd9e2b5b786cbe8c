import { requirementOfRule, type CompanyRule } from '@/shared/company-rules/company-rule'
import type { Requirement } from '@/shared/plan/requirement'
import type { Lot, LotTest } from '@/shared/records/lot'
import type { RecordKindKey } from '@/shared/records/record-kinds'
import type { Facts } from '@/shared/rules/facts'
import type { ListedPart } from '@/shared/works/listed-part'

/** A programme's facts as they would be after something changed; the very same where the change says nothing about it. */
export type FactsChange = (facts: Facts) => Facts

/** A lot of the works changed: where it is the programme's own, and where only the series of inspections looks at it. */
export const lotChanged =
  (id: string, change: (lot: Lot) => Lot): FactsChange =>
  (facts) => {
    const { records } = facts
    const lots = withOne(records.lots, { id }, change)
    const deliveries = withOne(records.deliveries, { id }, change)
    if (lots === records.lots && deliveries === records.deliveries) return facts
    return { ...facts, records: { ...records, lots, deliveries } }
  }

/** The lot that a test is of changed, by the test's id. */
export const testChanged =
  (id: string, change: (test: LotTest) => readonly LotTest[]): FactsChange =>
  (facts) => {
    const { lots, deliveries } = facts.records
    const lot = [...lots, ...deliveries].find(({ tests }) => tests.some((test) => test.id === id))
    if (!lot) return facts
    const tests = lot.tests.flatMap((test) => (test.id === id ? change(test) : [test]))
    return lotChanged(lot.id, (one) => ({ ...one, tests }))(facts)
  }

type Recorded = { readonly id: string }

/** Records of one kind added to those that a programme reads. */
export const recordsAdded =
  (kind: RecordKindKey, added: readonly Recorded[]): FactsChange =>
  (facts) => {
    const before = facts.records.byKind.get(kind) ?? []
    return added.length > 0 ? withRecords(facts, kind, [...before, ...added]) : facts
  }

/** One record changed, or gone where nothing is left of it, of whatever kind it is. */
export const recordChanged =
  (id: string, change: (record: Recorded) => readonly Recorded[]): FactsChange =>
  (facts) => {
    for (const [kind, records] of facts.records.byKind)
      if (records.some((one) => one.id === id))
        return withRecords(
          facts,
          kind,
          records.flatMap((one) => (one.id === id ? change(one) : [one])),
        )
    return facts
  }

const withRecords = (facts: Facts, kind: string, records: readonly Recorded[]): Facts => ({
  ...facts,
  records: { ...facts.records, byKind: new Map(facts.records.byKind).set(kind, records) },
})

/** A part of the works changed, where the programme names it. */
export const partChanged =
  (code: string, change: (part: ListedPart) => ListedPart): FactsChange =>
  (facts) => {
    const parts = withOne(facts.records.parts, { code }, change)
    return parts === facts.records.parts ? facts : { ...facts, records: { ...facts.records, parts } }
  }

type StatedRule = Parameters<typeof requirementOfRule>[0] & Pick<CompanyRule, 'id'>

/** A company rule taken over, or one that does not stand any more taken off: `gone` are the rules whose layers go. */
export const companyRuleTaken =
  (rule: StatedRule | undefined, gone: readonly string[]): FactsChange =>
  (facts) => {
    const stays = facts.requirements.filter(
      ({ companyRule }) => companyRule === undefined || !gone.includes(companyRule),
    )
    const laid: Requirement[] = rule
      ? [{ ...requirementOfRule(rule), id: rule.id, lesson: null, companyRule: rule.id }]
      : []
    const same = laid.length === 0 && stays.length === facts.requirements.length
    return same ? facts : { ...facts, requirements: [...stays, ...laid] }
  }

/** The list with the member that has these values changed; the very same list where it has none. */
function withOne<One extends object>(
  list: readonly One[],
  named: Partial<One>,
  change: (one: One) => One,
): readonly One[] {
  const isIt = (one: One) => Object.entries(named).every(([key, value]) => one[key as keyof One] === value)
  return list.some(isIt) ? list.map((one) => (isIt(one) ? change(one) : one)) : list
}
