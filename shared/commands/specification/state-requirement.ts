import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { boundInWords, byNotice, limitName } from '@/shared/commands/named'
import { STATES_LIMITS } from '@/shared/plan/requirement'

export const stateRequirement = defineFace({
  label: 'State a requirement on a limit',
  done: 'Stated a requirement on a limit',
  may: { scope: 'programme', departments: STATES_LIMITS },
  record: z.object({
    limit: z.string(),
    authority: z.string(),
    document: z.string(),
    clause: z.string(),
    value: z.number(),
    looserThanDefault: z.boolean(),
    reason: z.string(),
    /** The change notice that brought it. */
    notice: z.number().optional(),
  }),
  reads: ({ limit, authority, document, clause, value, looserThanDefault, reason, notice }) => ({
    subject: limitName(limit),
    what: [
      boundInWords(limit, value),
      ...(looserThanDefault ? ['looser than the default'] : []),
      `by ${document}${clause ? `, ${clause}` : ''} (${authority})${byNotice(notice)}`,
    ].join(', '),
    words: reason,
  }),
  leads: ({ limit }) => ({ kind: 'limit', limit }),
})
