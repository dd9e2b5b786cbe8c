import { marginGeometry, LIMIT_AT } from '@/app/ui/margin-geometry'
import type { Stage } from '@/shared/plan/stage'
import { verdictOn, type Margin, type Verdict } from '@/shared/rules/finding'

/** A finding that has a margin, as the map draws it. */
export interface Tick {
  readonly rule: string
  readonly title: string
  readonly itemKey: string
  readonly item: string
  readonly stage: Stage
  readonly verdict: Verdict
  readonly margin: Margin
  /** Keys of the values that its check reads. */
  readonly reads: readonly string[]
}

/** Where a margin lies on the map, as a share of its width from the left: beyond the limit, the limit, inside. */
export const placeOf = (margin: Margin): number => 1 - marginGeometry(margin).found
/** Where every limit lies. */
export const LIMIT_PLACE = 1 - LIMIT_AT

/** A margin that is a number can be drawn. */
export const isDrawn = (margin: Margin): boolean =>
  verdictOn(margin) !== 'undetermined' && Number.isFinite(margin.found) && Number.isFinite(margin.limit)

/** Ticks by their item; the item with the nearest first. */
export function byItem(ticks: readonly Tick[]): { item: string; itemKey: string; ticks: readonly Tick[] }[] {
  return [...new Set(ticks.map(({ itemKey }) => itemKey))].map((itemKey) => {
    const own = ticks.filter((tick) => tick.itemKey === itemKey)
    return { itemKey, item: own[0]?.item ?? '', ticks: own }
  })
}
