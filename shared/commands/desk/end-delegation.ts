import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'

/** The two people of a delegation, by their ids. */
interface Standing {
  readonly personId: string
  readonly delegateId: string
}

export const endDelegation = defineFace({
  label: 'End a standing in',
  done: 'Ended a standing in',
  may: { scope: 'installation', anyone: true },
  refuses: (actor: Actor, { personId, delegateId }: Standing) =>
    [personId, delegateId].includes(actor.personId)
      ? undefined
      : 'Only who is away, or who stands in, can end it.',
  record: z.object({ person: z.string(), delegate: z.string() }),
  reads: ({ person, delegate }) => ({
    subject: delegate,
    what: `no longer stands in for ${person}`,
  }),
  leads: () => ({ kind: 'desk settings' }),
})
