import { rulesReading } from '@/shared/plan/catalogue'
import type { Parameter } from '@/shared/plan/parameter'
import type { Requirement } from '@/shared/plan/requirement'
import { NO_RECORDS } from '@/shared/records/programme-records'
import type { Finding } from '@/shared/rules/finding'
import { judge, readableOf, type AnyRule } from '@/shared/rules/rule'

/** The specification, without the records that only the server has at hand. */
export interface SpecificationFacts {
  readonly values: ReadonlyMap<string, unknown>
  readonly requirements: readonly Requirement[]
  readonly today: string
}

/** What a new value would do to the findings that read it. */
export interface ChangePreview {
  readonly turned: readonly { readonly rule: AnyRule; readonly before: Finding; readonly after: Finding }[]
  readonly unchanged: readonly AnyRule[]
  /** Rules that read records too, and so cannot be judged on the specification alone. */
  readonly unseen: readonly AnyRule[]
}

/** Judges the rules that read a parameter, with its value as it is and as it would be. */
export function changePreview(
  parameter: Parameter,
  value: unknown,
  { values, requirements, today }: SpecificationFacts,
): ChangePreview {
  const now = { values, requirements, today, records: NO_RECORDS }
  const then = { ...now, values: new Map(values).set(parameter.key, value) }
  const readers = rulesReading(parameter.key)
  const seen = readers.filter((rule) => !readsRecords(rule))
  const judged = seen.map((rule) => ({ rule, before: judge(rule, now), after: judge(rule, then) }))
  return {
    turned: judged.filter(({ before, after }) => before.verdict !== after.verdict),
    unchanged: judged.filter(({ before, after }) => before.verdict === after.verdict).map(({ rule }) => rule),
    unseen: readers.filter(readsRecords),
  }
}

const readsRecords = (rule: AnyRule): boolean =>
  Object.values(rule.reads).some((read) => readableOf(read).source === 'records')
