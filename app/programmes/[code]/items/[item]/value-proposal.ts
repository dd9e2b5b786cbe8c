import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { itemHolding } from '@/shared/catalogue/standard-plan'
import type { Parameter } from '@/shared/plan/parameter'
import { valueDifference } from '@/shared/plan/value-difference'

/** A value that follows from something recorded, and how it differs from the one that stands. */
export interface ValueProposal {
  readonly parameter: Parameter
  readonly item: string
  readonly value: unknown
  /** A line a difference; empty where none is left. */
  readonly differences: readonly string[]
}

/** The proposals that have a value, for parameters of items that the programme plans. */
export const proposalsFor = (
  { state }: ProgrammeView,
  proposed: readonly (readonly [Parameter, unknown])[],
): ValueProposal[] =>
  proposed.flatMap(([parameter, value]) => {
    const item = itemHolding.parameter(parameter.key)
    const planned = state.items.some(({ definition }) => definition.key === item?.key)
    if (!item || !planned || value === undefined || isEmpty(value)) return []
    const differences = valueDifference(parameter, state.facts.values.get(parameter.key), value)
    return [{ parameter, item: item.key, value, differences }]
  })

const isEmpty = (value: unknown): boolean => Array.isArray(value) && value.length === 0
