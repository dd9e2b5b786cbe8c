import { z } from 'zod'
import { subjectRecord } from '@/shared/reviews/subject'

/** What an action came from: a line of the minutes of a review, or a comment. */
export const originRecord = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('minute'),
    review: z.number(),
    line: z.number(),
    lineId: z.string(),
    about: subjectRecord.nullable(),
    ownerId: z.string(),
    owner: z.string(),
  }),
  z.object({ kind: z.literal('comment'), comment: z.number() }),
])
export type ActionOrigin = z.output<typeof originRecord>

/** ", from line 4 of review 2 for Petra Lund" */
export function originInWords(origin: ActionOrigin | null | undefined): string {
  if (!origin) return ''
  return origin.kind === 'minute'
    ? `, from line ${origin.line} of review ${origin.review}, owed by ${origin.owner}`
    : `, from comment ${origin.comment}`
}
