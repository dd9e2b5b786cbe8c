import { formatQuantity } from '@/shared/quantity/format'
import type { Margin } from '@/shared/rules/finding'

/** The room in words: "0.07 mm inside", "0.01 mm outside". */
export function marginText({ found, limit, direction, unit }: Margin): string {
  if (Number.isNaN(found) || Number.isNaN(limit)) return 'not known'
  const room = direction === 'at most' ? limit - found : found - limit
  if (room === 0) return 'on the limit'
  return `${formatQuantity(Math.abs(room), unit, 3)} ${room > 0 ? 'inside' : 'outside'}`
}
