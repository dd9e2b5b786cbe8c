import { z } from 'zod'
import { recordedValue } from '@/shared/commands/recorded-value'
import { AUTHORITIES } from '@/shared/plan/requirement'

/** A proposed change as entries record it. */
export const proposedChange = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('value'),
    parameter: z.string(),
    value: recordedValue,
    seen: z.number(),
  }),
  z.object({
    kind: z.literal('requirement'),
    limit: z.string(),
    authority: z.enum(AUTHORITIES),
    document: z.string(),
    clause: z.string(),
    value: z.number(),
    relaxes: z.boolean(),
  }),
  z.object({
    kind: z.literal('withdrawal'),
    requirement: z.string(),
    limit: z.string(),
    authority: z.enum(AUTHORITIES),
    document: z.string(),
    value: z.number(),
  }),
])
