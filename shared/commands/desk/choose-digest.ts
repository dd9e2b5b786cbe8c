import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const chooseDigest = defineFace({
  label: 'Choose whether to be told by mail what is new on one’s desk',
  done: 'Chose whether to be told by mail what is new on the desk',
  may: { scope: 'installation', anyone: true },
  record: z.object({ person: z.string(), wanted: z.boolean() }),
  reads: ({ person, wanted }) => ({ subject: person, what: wanted ? 'wants the mail' : 'wants no mail' }),
  leads: () => ({ kind: 'desk settings' }),
})
