import { z } from 'zod'
import type { Place } from '@/shared/place'

/** Where what is recorded of a lot stands: at the supplier it was received from, before that in the programme. */
export const lotRecordedAt = { atSupplier: z.string().optional() } as const

export const lotPlace = (atSupplier: string | undefined, lot: string): Place =>
  atSupplier === undefined ? { kind: 'lot', lot } : { kind: 'works lot', supplier: atSupplier, lot }
