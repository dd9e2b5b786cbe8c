import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'

export const disablePerson = defineFace({
  label: 'Disable a person',
  done: 'Disabled a person',
  may: { scope: 'installation', administrator: true },
  refuses: (actor: Actor, { personId }: { readonly personId: string }) =>
    personId === actor.personId ? 'You cannot disable yourself.' : undefined,
  record: z.object({ person: z.string(), personId: z.string(), reason: z.string() }),
  reads: ({ person, reason }) => ({ subject: person, words: reason }),
  leads: ({ personId }) => ({ kind: 'person', personId }),
})
