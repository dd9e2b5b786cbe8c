import type { Parameter } from '@/shared/plan/parameter'
import type { Requirement } from '@/shared/plan/requirement'
import type { Inspection } from '@/shared/records/inspection'
import type { Instrument } from '@/shared/records/instrument'
import type { Log } from '@/shared/records/log'
import type { Lot } from '@/shared/records/lot'
import { NO_RECORDS } from '@/shared/records/programme-records'
import type { Facts } from '@/shared/rules/facts'
import type { Finding } from '@/shared/rules/finding'
import { judge, type AnyRule } from '@/shared/rules/rule'
import type { ListedPart } from '@/shared/works/listed-part'
import { groupedBy } from '@/shared/grouped-by'

/** One value of a specification under test, as `set` or `unchecked` makes it. */
export type SetValue = readonly [key: string, value: unknown]

/** A parameter's value, parsed as the door would parse it: an impossible value stops the test. */
export const set = <T>(parameter: Parameter<T>, value: T): SetValue => [
  parameter.key,
  parameter.schema.parse(value),
]

/** A value that no schema has seen, for the edge where something got past the door. */
export const unchecked = <T>(parameter: Parameter<T>, value: T): SetValue => [parameter.key, value]

export interface FactsInput {
  readonly values?: readonly SetValue[]
  readonly requirements?: readonly Requirement[]
  readonly lots?: readonly Lot[]
  readonly deliveries?: readonly Lot[]
  readonly logs?: readonly Log[]
  readonly inspections?: readonly Inspection[]
  readonly instruments?: readonly Instrument[]
  readonly parts?: readonly ListedPart[]
  /** Rows by record kind; the order given is the order of entry. */
  readonly records?: Readonly<Record<string, readonly { readonly id: string }[]>>
  /** 'YYYY-MM-DD' */
  readonly today?: string
}

/** The facts of a programme that holds just what a test says; judged on 2 March 2026 unless told. */
export function factsWith(input: FactsInput = {}): Facts {
  const logs = groupedBy(input.logs ?? [], ({ characteristic }) => characteristic)
  return {
    values: new Map(input.values ?? []),
    requirements: input.requirements ?? [],
    records: {
      lots: input.lots ?? NO_RECORDS.lots,
      deliveries: input.deliveries ?? NO_RECORDS.deliveries,
      logs,
      inspections: input.inspections ?? NO_RECORDS.inspections,
      instruments: input.instruments ?? NO_RECORDS.instruments,
      parts: input.parts ?? NO_RECORDS.parts,
      byKind: new Map(Object.entries(input.records ?? {})),
    },
    today: input.today ?? '2026-03-02',
  }
}

/** The finding of one rule on facts built from `input`. */
export const findingOf = (rule: AnyRule, input: FactsInput = {}): Finding => judge(rule, factsWith(input))

/** The same facts with one value replaced or added. */
export const withValue = (facts: Facts, [key, value]: SetValue): Facts => ({
  ...facts,
  values: new Map(facts.values).set(key, value),
})

/**
 * The finding after the finding's own remedy has been applied: what a remedy
 * promises. Throws when there is no remedy that one value would carry out.
 */
export function afterRemedy(rule: AnyRule, facts: Facts): Finding {
  const { remedy } = judge(rule, facts)
  if (remedy?.parameter === undefined || remedy.value === undefined) {
    throw new Error(`${rule.id} offers no remedy that sets one parameter.`)
  }
  return judge(rule, withValue(facts, [remedy.parameter, remedy.value]))
}

/** A programme's own layer on a limit, as one document states it. */
export const requirement = (
  limit: { readonly key: string },
  value: number,
  over: Partial<Requirement> = {},
): Requirement => ({
  id: `requirement-${limit.key}-${value}`,
  limit: limit.key,
  authority: 'customer',
  document: 'CS-100 issue 2',
  clause: '4.1',
  value,
  relaxes: false,
  reason: 'Stated in the contract.',
  lesson: null,
  ...over,
})
