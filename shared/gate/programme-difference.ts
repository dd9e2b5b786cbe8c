import { governingRequirement, type Limit } from '@/shared/plan/requirement'
import { sameValue } from '@/shared/plan/same-value'
import type { Parameter } from '@/shared/plan/parameter'
import type { Verdict } from '@/shared/rules/finding'
import type { AnyRule } from '@/shared/rules/rule'
import type { Judgement } from './judgement'
import type { ProgrammeState } from './programme-state'

/** A programme as far as it is compared. */
export interface ComparedProgramme {
  readonly state: ProgrammeState
  readonly judgement: Judgement
}

/** What two programmes say differently, in the order of the first one's plan; undefined where one says nothing. */
export interface ProgrammeDifference {
  readonly values: readonly {
    readonly parameter: Parameter
    readonly one: unknown
    readonly other: unknown
  }[]
  readonly limits: readonly { readonly limit: Limit; readonly one: LimitSaid; readonly other: LimitSaid }[]
  readonly verdicts: readonly {
    readonly rule: AnyRule
    readonly one: Verdict | undefined
    readonly other: Verdict | undefined
  }[]
  /** Items that only one of them has, or has not set aside. */
  readonly items: readonly { readonly key: string; readonly title: string; readonly in: 'one' | 'other' }[]
  /** How many parameters, limits and rules were compared in all. */
  readonly compared: number
}
export interface LimitSaid {
  readonly value: number
  readonly document: string
}

export function programmeDifference(one: ComparedProgramme, other: ComparedProgramme): ProgrammeDifference {
  const items = [one, other].flatMap(({ state }) => state.items.map(({ definition }) => definition))
  const parameters = distinct(items.flatMap((item) => item.parameters))
  const limits = distinct(items.flatMap((item) => item.limits))
  const rules = [...new Map(items.flatMap((item) => item.rules).map((rule) => [rule.id, rule])).values()]
  return {
    values: parameters.flatMap((parameter) => {
      const [a, b] = [one, other].map(({ state }) => state.facts.values.get(parameter.key))
      return sameValue(a, b) ? [] : [{ parameter, one: a, other: b }]
    }),
    limits: limits.flatMap((limit) => {
      const a = saidOf(limit, one)
      const b = saidOf(limit, other)
      return a.value === b.value && a.document === b.document ? [] : [{ limit, one: a, other: b }]
    }),
    verdicts: rules.flatMap((rule) => {
      const [a, b] = [one, other].map(({ judgement }) => judgement.findings.get(rule.id)?.verdict)
      return a === b ? [] : [{ rule, one: a, other: b }]
    }),
    items: [
      ...missingIn(other, one).map((item) => ({ ...item, in: 'one' as const })),
      ...missingIn(one, other).map((item) => ({ ...item, in: 'other' as const })),
    ],
    compared: parameters.length + limits.length + rules.length,
  }
}

const distinct = <Named extends { readonly key: string }>(all: readonly Named[]): Named[] => [
  ...new Map(all.map((one) => [one.key, one])).values(),
]

function saidOf(limit: Limit, { state }: ComparedProgramme): LimitSaid {
  const { value, document } = governingRequirement(limit, state.facts.requirements)
  return { value, document }
}

/** Items of one plan, by what they are called, that the other does not have or has set aside. */
function missingIn(from: ComparedProgramme, of: ComparedProgramme) {
  const asked = ({ state }: ComparedProgramme) =>
    state.items.filter(({ tailoredOut }) => !tailoredOut?.agreed)
  const titles = new Set(asked(from).map(({ definition }) => definition.title))
  return asked(of)
    .filter(({ definition }) => !titles.has(definition.title))
    .map(({ definition: { key, title } }) => ({ key, title }))
}
