import { findLimit, findParameter, itemHolding } from '@/shared/catalogue/standard-plan'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import type { ItemDefinition } from '@/shared/catalogue/item'
import type { Actor } from '@/shared/actor'
import type { JsonValue } from '@/shared/trail/canonical-json'
import { STATES_LIMITS, type StatedLimit } from '@/shared/plan/requirement'
import { sameValue } from '@/shared/plan/same-value'
import type { OptionAlternative } from './option-alternative'

/** Alternatives for a choice, laid side by side, and what became of them. */
export interface OptionStudy {
  readonly number: number
  /** The item it was opened from; its alternatives may touch any other. */
  readonly itemKey: string
  readonly title: string
  readonly alternatives: readonly OptionAlternative[]
  readonly openedBy: string
  readonly openedAt: string
  readonly adoption: OptionAdoption | null
}
export interface OptionAdoption {
  readonly name: string
  readonly why: string
  readonly by: string
  readonly at: string
}

type Values = Readonly<Record<string, JsonValue>>

/**
 * Leaves in each alternative what the study compares: parameters that at least
 * one alternative gives another value than today's. Where an alternative says
 * nothing of one of these, today's value is written down for it, so that it
 * means the same when today's value has moved on.
 */
export function comparedValues(
  alternatives: readonly Values[],
  today: ReadonlyMap<string, unknown>,
): Values[] {
  const keys = [...new Set(alternatives.flatMap((values) => Object.keys(values)))].sort()
  const compared = keys.filter((key) =>
    alternatives.some((values) => key in values && !sameValue(values[key], today.get(key))),
  )
  return alternatives.map((values) =>
    Object.fromEntries(
      compared.flatMap((key) => {
        const value = values[key] ?? (today.get(key) as JsonValue | undefined)
        return value === undefined ? [] : [[key, value] as const]
      }),
    ),
  )
}

/** The values an alternative would change, as the specification stands. */
export const changesOf = (
  { values }: Pick<OptionAlternative, 'values'>,
  today: ReadonlyMap<string, unknown>,
): ReadonlyMap<string, JsonValue> =>
  new Map(Object.entries(values).filter(([key, value]) => !sameValue(value, today.get(key))))

/** The limits an alternative would state that do not stand already by the same document. */
export const limitsToState = (
  { limits }: Pick<OptionAlternative, 'limits'>,
  inForce: readonly StatedLimit[],
): readonly StatedLimit[] =>
  limits.filter(
    (stated) =>
      !inForce.some((other) =>
        (['limit', 'authority', 'document', 'clause', 'value', 'relaxes'] as const).every(
          (part) => other[part] === stated[part],
        ),
      ),
  )

/** The items that a study touches: the one it was opened from, then those that hold what its alternatives name. */
export function itemsOf({
  itemKey,
  alternatives,
}: Pick<OptionStudy, 'itemKey' | 'alternatives'>): readonly string[] {
  const parameters = alternatives.flatMap(({ values }) => Object.keys(values))
  const limits = alternatives.flatMap((alternative) => alternative.limits.map(({ limit }) => limit))
  const holding = [
    ...parameters.flatMap((key) => itemHolding.parameter(key) ?? []),
    ...limits.flatMap((key) => itemHolding.limit(key) ?? []),
  ]
  return [...new Set([itemKey, ...holding.map(({ key }) => key)])]
}

/** What an alternative would do, as far as it decides who may adopt it. */
export interface Adopting {
  readonly item: Pick<ItemDefinition, 'title' | 'owner'>
  /** The values it would change, by parameter. */
  readonly changes: ReadonlyMap<string, unknown>
  /** The limits it would state. */
  readonly limits: readonly Pick<StatedLimit, 'limit'>[]
}

/**
 * Why a person may not adopt an alternative; undefined when they may. Each value
 * that changes belongs to a department: its people or the lead adopt it. Where
 * none changes, the people of the department that owns the item do, or the lead.
 * A limit is stated only by who may state one outside a study.
 */
export function adoptionRefusal(
  { item, changes, limits }: Adopting,
  actor: Pick<Actor, 'leads' | 'departments'>,
): string | undefined {
  const [limit] = limits
  if (limit && !STATES_LIMITS.some((department) => actor.departments.includes(department)))
    return `${findLimit(limit.limit)?.label ?? limit.limit} is a limit; ${STATES_LIMITS.map((department) => DEPARTMENT_NAMES[department].toLowerCase()).join(' or ')} adopt an alternative that states one.`
  if (actor.leads) return undefined
  const foreign = [...changes.keys()]
    .flatMap((key) => findParameter(key) ?? [])
    .find(({ owner }) => !actor.departments.includes(owner))
  if (foreign) return belongs(foreign.label, foreign.owner)
  if (changes.size === 0 && limits.length === 0 && !actor.departments.includes(item.owner))
    return belongs(item.title, item.owner)
  return undefined
}

const belongs = (what: string, owner: Department): string =>
  `${what} belongs to ${DEPARTMENT_NAMES[owner].toLowerCase()}; they or the lead adopt this alternative.`

/** The parameters of an adopted alternative whose values are others today. */
export const movedSince = (
  adopted: Pick<OptionAlternative, 'values'>,
  today: ReadonlyMap<string, unknown>,
): readonly string[] => [...changesOf(adopted, today).keys()]
