import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'

export const inviteMember = defineFace({
  label: 'Invite a person into a department',
  done: 'Invited a person into a department',
  may: { scope: 'programme', lead: true },
  record: z.object({ person: z.string(), department: z.enum(DEPARTMENTS) }),
  reads: ({ person, department }) => ({ subject: person, what: DEPARTMENT_NAMES[department] }),
  leads: () => ({ kind: 'members' }),
})
