import { findParameter } from '@/shared/catalogue/standard-plan'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import type { ItemDefinition } from '@/shared/catalogue/item'
import type { Actor } from '@/shared/actor'
import type { JsonValue } from '@/shared/trail/canonical-json'
import { sameValue } from '@/shared/plan/same-value'

/** One way a choice can be made. */
export interface OptionAlternative {
  readonly name: string
  readonly note: string
  /** What it would specify, by parameter; a parameter not named here stays as it is. */
  readonly values: Readonly<Record<string, JsonValue>>
  readonly costPerBoard: number
  readonly costOnce: number
  /** Defects to expect with it; null for those its process is said to have. */
  readonly defectsPerMillion: number | null
  /** Numbers of the answered actions it rests on. */
  readonly actions: readonly number[]
}

/** Alternatives for a choice, laid side by side, and what became of them. */
export interface OptionStudy {
  readonly number: number
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

/**
 * Why a person may not adopt an alternative; undefined when they may. Each value
 * that changes belongs to a department: its people or the lead adopt it. Where
 * none changes, the people of the department that owns the item do, or the lead.
 */
export function adoptionRefusal(
  item: Pick<ItemDefinition, 'title' | 'owner'>,
  changes: ReadonlyMap<string, unknown>,
  actor: Pick<Actor, 'leads' | 'departments'>,
): string | undefined {
  if (actor.leads) return undefined
  const foreign = [...changes.keys()]
    .flatMap((key) => findParameter(key) ?? [])
    .find(({ owner }) => !actor.departments.includes(owner))
  if (foreign) return belongs(foreign.label, foreign.owner)
  if (changes.size === 0 && !actor.departments.includes(item.owner)) return belongs(item.title, item.owner)
  return undefined
}

const belongs = (what: string, owner: Department): string =>
  `${what} belongs to ${DEPARTMENT_NAMES[owner].toLowerCase()}; they or the lead adopt this alternative.`

/** The parameters of an adopted alternative whose values are others today. */
export const movedSince = (
  adopted: Pick<OptionAlternative, 'values'>,
  today: ReadonlyMap<string, unknown>,
): readonly string[] => [...changesOf(adopted, today).keys()]
