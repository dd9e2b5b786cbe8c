import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const nameDelegate = defineFace({
  label: 'Name who stands in while one is away',
  done: 'Named who stands in',
  may: { scope: 'installation', anyone: true },
  record: z.object({
    person: z.string(),
    delegate: z.string(),
    fromOn: z.string(),
    toOn: z.string(),
  }),
  reads: ({ person, delegate, fromOn, toOn }) => ({
    subject: delegate,
    what: `stands in for ${person} from ${fromOn} to ${toOn}`,
  }),
  leads: () => ({ kind: 'desk settings' }),
})
