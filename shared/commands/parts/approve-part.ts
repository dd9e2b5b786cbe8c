import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'

export const approvePart = defineFace({
  label: 'Approve a part',
  done: 'Approved a part',
  may: { scope: 'works', of: 'part', departments: ['quality'], signature: true },
  /** Whose revision it is says nothing of who must read it: somebody else. */
  refuses: (actor: Actor, { authorId }: { readonly authorId: string }) =>
    authorId === actor.personId
      ? 'The newest revision is your own. Somebody else of quality approves it.'
      : undefined,
  record: z.object({ part: z.string(), revision: z.number() }),
  reads: ({ part, revision }) => ({ subject: `part ${part}`, what: `revision ${revision}` }),
  leads: ({ part }) => ({ kind: 'part', part, section: 'approval' }),
})
