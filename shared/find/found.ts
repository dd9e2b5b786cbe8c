import { FIND_GROUPS, type FindGroup } from './find-groups'
import type { Findable } from './findable'
import { wordsOf } from './folded'
import { matchOf } from './match'

/** The matches of one group, the best first, and how many there are of them. */
export interface FoundGroup<Where> {
  readonly group: FindGroup
  readonly matches: readonly Findable<Where>[]
  readonly all: number
}

interface Ranked<Where> {
  readonly findable: Findable<Where>
  readonly here: boolean
  readonly match: number
}

/**
 * What answers a query, by group: in each the programme one is in comes first, then the better match, then the order
 * given. Groups stand by their best match, equally good ones in their own order.
 */
export function foundIn<Where>(
  query: string,
  findables: readonly Findable<Where>[],
  { here, most }: { readonly here?: string | undefined; readonly most: number },
): FoundGroup<Where>[] {
  const words = wordsOf(query)
  const ranked = findables.flatMap((findable): Ranked<Where>[] => {
    const match = matchOf(words, findable)
    return match === undefined
      ? []
      : [{ findable, match, here: here !== undefined && findable.programme === here }]
  })
  return FIND_GROUPS.map((group) => ranked.filter(({ findable }) => findable.group === group))
    .filter((of) => of.length > 0)
    .sort((a, b) => bestOf(a) - bestOf(b))
    .map((of) => {
      const inOrder = [...of].sort((a, b) => Number(b.here) - Number(a.here) || a.match - b.match)
      return {
        group: of[0]!.findable.group,
        matches: inOrder.slice(0, most).map(({ findable }) => findable),
        all: of.length,
      }
    })
}

const bestOf = (of: readonly Ranked<unknown>[]): number => Math.min(...of.map(({ match }) => match))
