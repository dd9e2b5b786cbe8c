import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { closingRefusal, type NoticeStanding } from '@/shared/gate/change-notice'
import { DEPARTMENTS } from '@/shared/plan/department'

interface Closing {
  readonly standing: NoticeStanding
  readonly disposition: 'refused' | 'withdrawn'
}

export const closeChangeNotice = defineFace({
  label: 'Refuse or withdraw a change notice',
  done: 'Refused or withdrew a change notice',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  refuses: (actor: Actor, { standing, disposition }: Closing) => closingRefusal(standing, disposition, actor),
  record: z.object({
    notice: z.number(),
    title: z.string(),
    disposition: z.enum(['refused', 'withdrawn']),
    reason: z.string(),
  }),
  reads: ({ notice, title, disposition, reason }) => ({
    subject: `change notice ${notice}, ${title}`,
    what: disposition,
    words: reason,
  }),
  leads: ({ notice }) => ({ kind: 'notice', number: notice }),
})
