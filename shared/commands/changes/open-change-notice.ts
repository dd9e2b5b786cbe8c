import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENTS } from '@/shared/plan/department'

export const openChangeNotice = defineFace({
  label: 'Open a change notice',
  done: 'Opened a change notice',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({ number: z.number(), title: z.string(), reason: z.string() }),
  reads: ({ number, title, reason }) => ({ subject: `change notice ${number}, ${title}`, words: reason }),
  leads: ({ number }) => ({ kind: 'notice', number }),
})
