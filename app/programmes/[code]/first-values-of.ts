import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findParameter, findRule, itemHolding } from '@/shared/catalogue/standard-plan'
import type { ItemDefinition } from '@/shared/catalogue/item'
import type { PlannedItem } from '@/shared/gate/programme-state'
import { memo } from '@/shared/memo'
import type { Parameter } from '@/shared/plan/parameter'
import { firstValues } from '@/shared/rules/first-values'
import type { AnyRule } from '@/shared/rules/rule'

/** One of the first values of a programme, and what stating it opens. */
export interface FirstOfProgramme {
  readonly parameter: Parameter
  readonly item: ItemDefinition
  readonly opens: readonly AnyRule[]
  readonly stated: boolean
}

/** The order follows from the plan alone, which is the same object until it changes: each route card would ask anew. */
const firstOfPlan = memo((items: readonly PlannedItem[]) => {
  const planned = items.filter(({ tailoredOut }) => !tailoredOut?.agreed)
  return firstValues(planned.flatMap(({ definition }) => definition.rules))
}, 1)

/** The values that a programme states first, in order: the same from its first day on, those stated ticked. */
export const firstValuesOf = ({ state }: ProgrammeView): FirstOfProgramme[] =>
  firstOfPlan(state.items).flatMap(({ parameter: key, opens }) => {
    const [parameter, item] = [findParameter(key), itemHolding.parameter(key)]
    return parameter && item
      ? {
          parameter,
          item,
          opens: opens.flatMap((id) => findRule(id) ?? []),
          stated: state.facts.values.has(key),
        }
      : []
  })

/** Whether so few of them are stated that a programme is led to them first: fewer than half. */
export const fewStated = (values: readonly FirstOfProgramme[]): boolean =>
  values.filter(({ stated }) => stated).length * 2 < values.length
