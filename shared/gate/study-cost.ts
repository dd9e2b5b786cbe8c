import { drawnCosts, type AskedCost } from '@/shared/cost/drawn-costs'
import type { Specified } from '@/shared/cost/option-cost'
import type { OptionOutcome } from './option-outcome'

const NOTHING = { lines: [], replaced: [], gaps: [{ kind: 'nothing named' }] } as const

/** The alternatives of a study with what they cost by what is said, and the specification as each would have it. */
export function specifiedOf(
  study: number,
  outcomes: readonly OptionOutcome[],
  actions: readonly AskedCost[],
): Specified[] {
  const drawn = drawnCosts(
    study,
    outcomes.map(({ alternative }) => alternative),
    actions,
  )
  return outcomes.map(({ alternative, values }, position) => ({
    alternative,
    drawn: drawn[position] ?? NOTHING,
    values,
  }))
}
