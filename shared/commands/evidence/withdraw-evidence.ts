import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { itemName } from '@/shared/commands/named'
import type { EvidenceEntry } from '@/shared/gate/programme-state'
import { DEPARTMENTS } from '@/shared/plan/department'

export const withdrawEvidence = defineFace({
  label: 'Withdraw evidence',
  done: 'Withdrew evidence',
  may: { scope: 'programme', departments: DEPARTMENTS },
  refuses: (actor: Actor, { addedById }: Pick<EvidenceEntry, 'addedById'>) =>
    addedById === actor.personId || actor.departments.includes('quality')
      ? undefined
      : 'Only who attached it, or quality, may withdraw evidence.',
  record: z.object({
    itemKey: z.string(),
    kind: z.string(),
    fileName: z.string().nullable(),
    url: z.string().nullable(),
    reason: z.string(),
  }),
  reads: ({ itemKey, kind, fileName, url, reason }) => ({
    subject: itemName(itemKey),
    what: `${kind}: ${fileName ?? url}`,
    words: reason,
  }),
  leads: ({ itemKey }) => ({ kind: 'item', item: itemKey, part: 'evidence' }),
})
