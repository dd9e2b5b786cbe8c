import { formatQuantity } from '@/shared/quantity/format'
import type { Margin } from '@/shared/rules/finding'

/** A margin in words: "margin +0.07 mm" inside the limit, "over by 0.01 mm" or "under by 0.01 mm" outside it. */
export function marginText({ found, limit, direction, unit }: Margin): string {
  if (Number.isNaN(found) || Number.isNaN(limit)) return 'not known'
  const marginValue = direction === 'at most' ? limit - found : found - limit
  if (marginValue === 0) return 'on the limit'
  if (marginValue > 0) return `margin +${formatQuantity(marginValue, unit, 3)}`
  return `${direction === 'at most' ? 'over' : 'under'} by ${formatQuantity(-marginValue, unit, 3)}`
}
