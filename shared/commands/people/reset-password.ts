import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'

export const resetPassword = defineFace({
  label: 'Give a person a one-time password',
  done: 'Gave a person a one-time password',
  may: { scope: 'installation', administrator: true },
  refuses: (actor: Actor, { personId }: { readonly personId: string }) =>
    personId === actor.personId ? 'Change your own password under your name, above.' : undefined,
  record: z.object({
    person: z.string(),
    personId: z.string(),
    /** Entries from before such passwords expired have none. */
    oneTimePasswordUntil: z.string().optional(),
  }),
  reads: ({ person, oneTimePasswordUntil: until }, moment) => ({
    subject: person,
    what: until && `good until ${moment(until)}`,
  }),
  leads: ({ personId }) => ({ kind: 'person', personId }),
})
