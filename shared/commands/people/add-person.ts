import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { ofTheWorks } from '@/shared/commands/people/of-the-works'

export const addPerson = defineFace({
  label: 'Add a person',
  done: 'Added a person',
  may: { scope: 'installation', administrator: true },
  record: z.object({
    person: z.string(),
    personId: z.string(),
    email: z.string(),
    rights: z.string(),
    /** Not said before the works had people of their own. */
    worksDepartment: z.string().nullish(),
  }),
  reads: ({ person, email, rights, worksDepartment }) => ({
    subject: person,
    what: `${email}, as ${rights}${ofTheWorks(worksDepartment)}`,
  }),
  leads: ({ personId }) => ({ kind: 'person', personId }),
})
