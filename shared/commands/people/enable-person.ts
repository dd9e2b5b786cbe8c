import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const enablePerson = defineFace({
  label: 'Enable a person',
  done: 'Enabled a person',
  may: { scope: 'installation', administrator: true },
  record: z.object({ person: z.string(), personId: z.string(), reason: z.string() }),
  reads: ({ person, reason }) => ({ subject: person, words: reason }),
  leads: ({ personId }) => ({ kind: 'person', personId }),
})
