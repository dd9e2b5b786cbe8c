import { readableOf, type AnyRule } from '@/shared/rules/rule'
import { BOARD_LIMITS } from './board-limits'
import type { ItemDefinition } from './item'
import { assessmentItems } from './assessment-items'
import { controlItems } from './control-items'
import { evaluationItems } from './evaluation-items'
import { frameItems } from './frame-items'
import { specificationItems } from './specification-items'
import type { Parameter } from '@/shared/plan/parameter'
import type { Limit } from '@/shared/plan/requirement'
import { groupedBy } from '@/shared/grouped-by'

/** The standard plan: every item a new programme starts with, in the order of the route card. */
export const STANDARD_PLAN: readonly ItemDefinition[] = [
  ...frameItems,
  ...specificationItems,
  ...evaluationItems,
  ...controlItems,
  ...assessmentItems,
]

const itemsByKey = new Map(STANDARD_PLAN.map((item) => [item.key, item]))
const parametersByKey = new Map(
  STANDARD_PLAN.flatMap((item) => item.parameters.map((parameter) => [parameter.key, parameter])),
)
const limitsByKey = new Map(
  [...STANDARD_PLAN.flatMap((item) => item.limits), ...BOARD_LIMITS.map(({ limit }) => limit)].map(
    (limit) => [limit.key, limit],
  ),
)
const rulesById = new Map(STANDARD_PLAN.flatMap((item) => item.rules.map((rule) => [rule.id, rule])))
const itemOfParameter = new Map(
  STANDARD_PLAN.flatMap((item) => item.parameters.map((parameter) => [parameter.key, item])),
)
const itemOfRule = new Map(STANDARD_PLAN.flatMap((item) => item.rules.map((rule) => [rule.id, item])))
const itemOfLimit = new Map([
  ...STANDARD_PLAN.flatMap((item) => item.limits.map((limit) => [limit.key, item] as const)),
  ...BOARD_LIMITS.flatMap(({ limit, near }) => {
    const item = itemsByKey.get(near)
    return item ? [[limit.key, item] as const] : []
  }),
])

/** Every parameter, rule and limit, each once; those limits too that only the files of a board are judged by. */
export const ALL_PARAMETERS: readonly Parameter[] = [...parametersByKey.values()]
export const ALL_RULES: readonly AnyRule[] = [...rulesById.values()]
export const ALL_LIMITS: readonly Limit[] = [...limitsByKey.values()]

export const findItem = (key: string): ItemDefinition | undefined => itemsByKey.get(key)
export const findParameter = (key: string): Parameter | undefined => parametersByKey.get(key)
export const findLimit = (key: string): Limit | undefined => limitsByKey.get(key)
export const findRule = (id: string): AnyRule | undefined => rulesById.get(id)

/** The item a parameter, a rule or a limit belongs to or, of what boards are judged by, is told beside. */
export const itemHolding = {
  parameter: (key: string): ItemDefinition | undefined => itemOfParameter.get(key),
  rule: (id: string): ItemDefinition | undefined => itemOfRule.get(id),
  limit: (key: string): ItemDefinition | undefined => itemOfLimit.get(key),
}

/** The rules that read a parameter or a limit, straight from their declarations. */
export const rulesReading = (key: string): readonly AnyRule[] => readers.get(key) ?? []

const readers = groupedBy(
  ALL_RULES.flatMap((rule) => Object.values(rule.reads).map((read) => ({ rule, key: readableOf(read).key }))),
  ({ key }) => key,
  ({ rule }) => rule,
)
const requiredParameters = new Set<string>()
const optionalParameters = new Set<string>()
for (const rule of ALL_RULES) {
  for (const read of Object.values(rule.reads)) {
    const { source, key } = readableOf(read)
    if (source === 'parameter')
      (read.source === 'optional' ? optionalParameters : requiredParameters).add(key)
  }
}

/** A parameter may stay empty only when every rule that reads it can do without, or when it came later than its item. */
export const mayStayEmpty = ({ key, addedLater }: Parameter): boolean =>
  addedLater === true || (optionalParameters.has(key) && !requiredParameters.has(key))
