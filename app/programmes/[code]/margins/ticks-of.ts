import type { Judgement } from '@/shared/gate/judgement'
import { readableOf } from '@/shared/rules/rule'
import { isDrawn, placeOf, type Tick } from './tick'

/** All findings of a programme that have a margin against a known limit, the nearest to it (or furthest beyond) first. */
export function ticksOf({ items, findings }: Pick<Judgement, 'items' | 'findings'>): Tick[] {
  const ticks = items.flatMap(({ item: { definition } }) =>
    definition.rules.flatMap(({ id, title, reads }): Tick[] => {
      const finding = findings.get(id)
      if (!finding?.margin || !isDrawn(finding.margin)) return []
      return [
        {
          rule: id,
          title,
          itemKey: definition.key,
          item: definition.title,
          stage: definition.stage,
          verdict: finding.verdict,
          margin: finding.margin,
          reads: Object.values(reads)
            .map(readableOf)
            .filter(({ source }) => source === 'parameter')
            .map(({ key }) => key),
        },
      ]
    }),
  )
  return ticks.sort((a, b) => placeOf(a.margin) - placeOf(b.margin) || a.title.localeCompare(b.title, 'en'))
}
