import { z } from 'zod'
import { noticeCostRecord } from '@/shared/commands/changes/cost-change-notice'
import { noticeCostInWords } from '@/shared/commands/changes/cost-in-words'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENTS } from '@/shared/plan/department'

export const openChangeNotice = defineFace({
  label: 'Open a change notice',
  done: 'Opened a change notice',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    number: z.number(),
    title: z.string(),
    reason: z.string(),
    ...noticeCostRecord.shape,
  }),
  reads: ({ number, title, reason, ...cost }) => ({
    subject: `change notice ${number}, ${title}`,
    what: `costs ${noticeCostInWords(cost)}`,
    words: reason,
  }),
  leads: ({ number }) => ({ kind: 'notice', number }),
})
