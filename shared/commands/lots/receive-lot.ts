import { z } from 'zod'
import { lotPlace, lotRecordedAt } from '@/shared/commands/lots/lot-place'
import { defineFace } from '@/shared/commands/face'
import { LOT_COLUMNS } from '@/shared/records/correctable-columns'
import { valuesInWords } from '@/shared/records/values-in-words'

export const receiveLot = defineFace({
  label: 'Receive a lot',
  done: 'Received a lot',
  may: { scope: 'works', of: 'supplier', departments: ['quality', 'production'] },
  record: z.object({
    ...lotRecordedAt,
    code: z.string(),
    part: z.string(),
    supplierResult: z.string(),
    storage: z.record(z.string(), z.unknown()),
    kind: z.string(),
    supplier: z.string(),
    dateCode: z.string(),
    quantity: z.number(),
    receivedOn: z.string(),
    expiresOn: z.string().nullish(),
  }),
  reads: ({ atSupplier: _, code, part, supplierResult, storage, ...noted }) => ({
    subject: `lot ${code}, ${part}`,
    what: valuesInWords(LOT_COLUMNS, { ...noted, ...storage }),
    words: supplierResult,
  }),
  leads: ({ atSupplier, code }) => lotPlace(atSupplier, code),
})
