import { z } from 'zod'
import type { Place } from '@/shared/place'

/** What a picture shows that belongs to no item. */
export const picturedRecord = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('nonconformity'), number: z.number() }),
  z.object({ kind: z.literal('joint'), assembly: z.string(), joint: z.string() }),
])
export type Pictured = z.output<typeof picturedRecord>

export const picturedInWords = (about: Pictured): string =>
  about.kind === 'joint' ? `joint ${about.joint} of ${about.assembly}` : `nonconformity ${about.number}`

export const placeOfPictured = (about: Pictured): Place =>
  about.kind === 'joint' ? { kind: 'rework' } : { kind: 'nonconformity', number: about.number }
