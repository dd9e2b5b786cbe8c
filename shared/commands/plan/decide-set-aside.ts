import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { itemName } from '@/shared/commands/named'
import type { TailoredOut } from '@/shared/gate/programme-state'

export const decideSetAside = defineFace({
  label: 'Decide whether an item is not applicable',
  done: 'Decided whether an item is not applicable',
  may: { scope: 'programme', departments: ['quality'] },
  refuses: (actor: Actor, { proposedById }: Pick<TailoredOut, 'proposedById'>) =>
    proposedById === actor.personId ? 'You proposed it. Somebody else of quality decides.' : undefined,
  separates: true,
  record: z.object({
    item: z.string(),
    title: z.string(),
    reason: z.string(),
    proposedBy: z.string().optional(),
    agree: z.boolean(),
    comment: z.string(),
  }),
  reads: ({ item, title, reason, proposedBy, agree, comment }) => ({
    subject: itemName(item, title),
    what: `${agree ? 'agreed' : 'refused'}; proposed${proposedBy ? ` by ${proposedBy}` : ''} because: ${reason}`,
    words: comment,
  }),
  leads: ({ item }) => ({ kind: 'item', item }),
})
