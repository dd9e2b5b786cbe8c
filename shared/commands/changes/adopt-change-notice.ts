import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { changeInWords } from '@/shared/commands/changes/change-in-words'
import { proposedChange } from '@/shared/commands/changes/proposed-change'
import { defineFace } from '@/shared/commands/face'
import { noticeAdoptionRefusal, type NoticeStanding } from '@/shared/gate/change-notice'

export const adoptChangeNotice = defineFace({
  label: 'Adopt a change notice',
  done: 'Adopted a change notice',
  may: { scope: 'programme', departments: ['quality'], lead: true },
  refuses: (actor: Actor, standing: NoticeStanding) => noticeAdoptionRefusal(standing, actor.personId),
  record: z.object({
    notice: z.number(),
    title: z.string(),
    reason: z.string(),
    changes: z.array(proposedChange),
  }),
  reads: ({ notice, title, reason, changes }) => ({
    subject: `change notice ${notice}, ${title}`,
    what: changes.map((change) => changeInWords(change)).join('; '),
    words: reason,
  }),
  leads: ({ notice }) => ({ kind: 'notice', number: notice }),
})
