import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'

export const removeMember = defineFace({
  label: 'Take a person out of a department',
  done: 'Took a person out of a department',
  may: { scope: 'programme', lead: true },
  record: z.object({ person: z.string(), department: z.enum(DEPARTMENTS), reason: z.string() }),
  reads: ({ person, department, reason }) => ({
    subject: person,
    what: DEPARTMENT_NAMES[department],
    words: reason,
  }),
  leads: () => ({ kind: 'members' }),
})
