import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { fromTo } from '@/shared/commands/named'

export const changePerson = defineFace({
  label: 'Change a person’s name, address or rights',
  done: 'Changed a person’s name, address or rights',
  may: { scope: 'installation', administrator: true },
  record: z.object({
    personId: z.string(),
    before: z.object({ name: z.string(), email: z.string() }),
    name: z.string(),
    email: z.string(),
    rights: z.string(),
  }),
  reads: ({ before, name, email, rights }) => ({
    subject: name,
    what: `${fromTo(`${before.name}, ${before.email}`, `${name}, ${email}`)}, as ${rights}`,
  }),
  leads: ({ personId }) => ({ kind: 'person', personId }),
})
