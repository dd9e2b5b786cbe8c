import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const addPerson = defineFace({
  label: 'Add a person',
  done: 'Added a person',
  may: { scope: 'installation', administrator: true },
  record: z.object({ person: z.string(), personId: z.string(), email: z.string(), rights: z.string() }),
  reads: ({ person, email, rights }) => ({ subject: person, what: `${email}, as ${rights}` }),
  leads: ({ personId }) => ({ kind: 'person', personId }),
})
