import { z } from 'zod'
import { noticeCostInWords } from '@/shared/commands/changes/cost-in-words'
import { defineFace } from '@/shared/commands/face'
import { fromTo } from '@/shared/commands/named'
import { DEPARTMENTS } from '@/shared/plan/department'

export const noticeCostRecord = z.object({
  costPerBoard: z.number().nullable(),
  costOnce: z.number().nullable(),
})

export const costChangeNotice = defineFace({
  label: 'Change what a change notice costs',
  done: 'Changed what a change notice costs',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    notice: z.number(),
    title: z.string(),
    before: noticeCostRecord,
    after: noticeCostRecord,
    reason: z.string(),
  }),
  reads: ({ notice, title, before, after, reason }) => ({
    subject: `change notice ${notice}, ${title}`,
    what: fromTo(noticeCostInWords(before), noticeCostInWords(after)),
    words: reason,
  }),
  leads: ({ notice }) => ({ kind: 'notice', number: notice }),
})
