import { capitalised } from '@/shared/quantity/capitalised'
import { z } from 'zod'
import { formatQuantity } from '@/shared/quantity/format'

/** For how many boards a concession holds, and until which day. */
export const concessionBounds = z.object({ quantity: z.number().nullable(), untilOn: z.string().nullable() })

/** "For 5 boards, until 2026-12-31." */
export function boundsInWords({ quantity, untilOn }: z.infer<typeof concessionBounds>): string {
  const bounds = [
    quantity === null ? '' : `for ${formatQuantity(quantity, 'boards', 9)}`,
    untilOn === null ? '' : `until ${untilOn}`,
  ].filter(Boolean)
  const said = bounds.join(', ')
  return said && `${capitalised(said)}.`
}
