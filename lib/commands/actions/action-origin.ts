import { z } from 'zod'
import { loadOpenComment } from '@/lib/commands/comments/load-comment'
import { id, wholeNumber } from '@/lib/commands/inputs'
import { memberNames } from '@/lib/commands/reviews/attendance'
import { subjectInput } from '@/lib/commands/reviews/known-subject'
import { lineSubject, loadOpenReview, nextLine } from '@/lib/commands/reviews/load-open-review'
import { Prisma } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import type { ActionOrigin } from '@/shared/commands/actions/origin'
import { Refused } from '@/shared/refused'

/** What an action came from, as a caller gives it: running minutes, with who owes it; or a comment. */
export const originInput = z
  .discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('minute'),
      review: wholeNumber('The review', 1, 1_000_000),
      about: subjectInput.nullable(),
      owner: id,
    }),
    z.strictObject({ kind: z.literal('comment'), comment: wholeNumber('The comment', 1, 1_000_000) }),
  ])
  .nullable()
  .default(null)
type OriginInput = z.output<typeof originInput>

/** The origin as an entry records it; a line of minutes gets its number and id here. */
export async function loadOrigin(
  tx: Transaction,
  origin: OriginInput,
  { programmeId, newId }: { readonly programmeId: string; readonly newId: () => string },
): Promise<ActionOrigin | null> {
  if (!origin) return null
  if (origin.kind === 'comment') {
    const { number } = await loadOpenComment(tx, programmeId, origin.comment)
    return { kind: 'comment', comment: number }
  }
  const review = await loadOpenReview(tx, programmeId, origin.review)
  const owner = (await memberNames(tx, programmeId)).get(origin.owner)
  if (owner === undefined)
    throw new Refused('Whoever owes an action is a member of the programme.', { owner: 'Not a member.' })
  return {
    kind: 'minute',
    review: review.number,
    line: nextLine(review),
    lineId: newId(),
    about: await lineSubject(tx, programmeId, review, origin.about),
    ownerId: origin.owner,
    owner,
  }
}

/** Writes what the action does to where it came from: a line of the minutes, or the comment that it resolves. */
export async function applyOrigin(
  tx: Transaction,
  origin: ActionOrigin | null,
  { number, question }: { readonly number: number; readonly question: string },
  {
    programmeId,
    personId,
    now,
  }: { readonly programmeId: string; readonly personId: string; readonly now: string },
): Promise<void> {
  if (origin?.kind === 'comment')
    await tx.comment.update({
      where: { programmeId_number: { programmeId, number: origin.comment } },
      data: { resolvedById: personId, resolvedAt: now, action: number },
    })
  if (origin?.kind === 'minute')
    await tx.minuteLine.create({
      data: {
        id: origin.lineId,
        programmeId,
        review: origin.review,
        number: origin.line,
        kind: 'action',
        about: origin.about ? { kind: origin.about.kind, key: origin.about.key } : Prisma.DbNull,
        text: question,
        action: number,
        ownerId: origin.ownerId,
        authorId: personId,
        at: now,
      },
    })
}
