import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { itemName } from '@/shared/commands/named'
import type { EvidenceEntry } from '@/shared/gate/programme-state'
import { DEPARTMENTS } from '@/shared/plan/department'
import { picturedInWords, picturedRecord, placeOfPictured } from '@/shared/reviews/pictured'

export const withdrawEvidence = defineFace({
  label: 'Withdraw evidence',
  done: 'Withdrew evidence',
  may: { scope: 'programme', departments: DEPARTMENTS },
  refuses: (actor: Actor, { addedById }: Pick<EvidenceEntry, 'addedById'>) =>
    addedById === actor.personId || actor.departments.includes('quality')
      ? undefined
      : 'Only who attached it, or quality, may withdraw evidence.',
  record: z.object({
    itemKey: z.string().nullable(),
    /** Of a picture that belongs to no item. */
    about: picturedRecord.nullish(),
    kind: z.string(),
    fileName: z.string().nullable(),
    url: z.string().nullable(),
    reason: z.string(),
  }),
  reads: ({ itemKey, about, kind, fileName, url, reason }) => ({
    subject: about ? picturedInWords(about) : itemName(itemKey ?? ''),
    what: `${kind}: ${fileName ?? url}`,
    words: reason,
  }),
  leads: ({ itemKey, about }) =>
    about ? placeOfPictured(about) : { kind: 'item', item: itemKey ?? '', part: 'evidence' },
})
