import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Parameter } from '@/shared/plan/parameter'
import { governingRequirement, type Limit, type GoverningRequirement } from '@/shared/plan/requirement'

/** What is specified of a parameter today; undefined while nothing is. */
export const valueOf = <T>({ state }: ProgrammeView, parameter: Parameter<T>): T | undefined =>
  state.facts.values.get(parameter.key) as T | undefined

/** Which layer rules a limit today. */
export const governingFor = ({ state }: ProgrammeView, limit: Limit): GoverningRequirement =>
  governingRequirement(limit, state.facts.requirements)

/** What a contradictory row cannot give: its finding says why, and there is nothing to draw. */
export function orNothing<T>(make: () => T): T | undefined {
  try {
    return make()
  } catch (error) {
    if (error instanceof RangeError) return undefined
    throw error
  }
}
