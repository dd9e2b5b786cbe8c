import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { ofTheWorks } from '@/shared/commands/people/of-the-works'
import { fromTo } from '@/shared/commands/named'

export const changePerson = defineFace({
  label: 'Change a person’s name, address or rights',
  done: 'Changed a person’s name, address or rights',
  may: { scope: 'installation', administrator: true },
  record: z.object({
    personId: z.string(),
    before: z.object({ name: z.string(), email: z.string(), worksDepartment: z.string().nullish() }),
    name: z.string(),
    email: z.string(),
    rights: z.string(),
    worksDepartment: z.string().nullish(),
  }),
  reads: ({ before, name, email, rights, worksDepartment }) => ({
    subject: name,
    what: `${fromTo(
      `${before.name}, ${before.email}${ofTheWorks(before.worksDepartment)}`,
      `${name}, ${email}${ofTheWorks(worksDepartment)}`,
    )}, as ${rights}`,
  }),
  leads: ({ personId }) => ({ kind: 'person', personId }),
})
