import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { boundInWords, byNotice, limitName } from '@/shared/commands/named'

export const withdrawRequirement = defineFace({
  label: 'Withdraw a requirement',
  done: 'Withdrew a requirement',
  may: { scope: 'programme', departments: ['design', 'quality'] },
  record: z.object({
    limit: z.string(),
    authority: z.string(),
    document: z.string(),
    value: z.number(),
    reason: z.string(),
    /** The change notice that withdrew it. */
    notice: z.number().optional(),
  }),
  reads: ({ limit, authority, document, value, reason, notice }) => ({
    subject: limitName(limit),
    what: `${boundInWords(limit, value)}, by ${document} (${authority})${byNotice(notice)}`,
    words: reason,
  }),
  leads: ({ limit }) => ({ kind: 'limit', limit }),
})
