import { z } from 'zod'
import { COST_KINDS, COST_PERS } from '@/shared/cost/cost-line'
import type { RangeText } from '@/shared/quantity/range-text'

/** An amount as an entry records it: a number, both ends of a range, or null where it is not known. */
const amountRecord = z.union([
  z.number(),
  z.custom<RangeText>((given) => typeof given === 'string'),
  z.null(),
])

/** One amount that somebody named. */
export const costLineRecord = z.object({
  kind: z.enum(COST_KINDS),
  per: z.enum(COST_PERS).nullable(),
  amount: amountRecord,
})

/** The same, for one alternative of a study or for all. */
export const answeredLineRecord = costLineRecord.extend({ alternative: z.string().nullable() })
