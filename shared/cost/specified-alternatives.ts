import { drawnCosts, type AskedCost, type CostedAlternative } from './drawn-costs'
import type { PricedAlternative, Specified } from './option-cost'

const NOTHING = { lines: [], replaced: [], gaps: [{ kind: 'nothing named' }] } as const

/** The alternatives of a study with what they cost by what is said, and the specification as each would have it. */
export function specifiedOf(
  study: number,
  alternatives: readonly {
    readonly alternative: PricedAlternative & CostedAlternative
    readonly values: ReadonlyMap<string, unknown>
  }[],
  actions: readonly AskedCost[],
): Specified[] {
  const drawn = drawnCosts(
    study,
    alternatives.map(({ alternative }) => alternative),
    actions,
  )
  return alternatives.map(({ alternative, values }, position) => ({
    alternative,
    drawn: drawn[position] ?? NOTHING,
    values,
  }))
}
