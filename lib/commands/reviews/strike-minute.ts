import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { optionalLine, reason, wholeNumber } from '@/lib/commands/inputs'
import { loadOpenReview, nextLine, reviewNamed } from '@/lib/commands/reviews/load-open-review'
import { Prisma } from '@/lib/db/generated/client'
import { Refused } from '@/shared/refused'

/** Strikes a line while the minutes are open, and writes another in its place where one is given. Both stay to be read. */
export const strikeMinute = defineCommand({
  name: 'strike-minute',
  input: z.strictObject({
    ...reviewNamed,
    line: wholeNumber('The line', 1, 1_000_000),
    instead: optionalLine('The line instead', 2000),
    reason,
  }),
  async load(tx, { review: number, line }, { programmeId }) {
    const review = await loadOpenReview(tx, programmeId, number)
    const struck = review.lines.find((one) => one.number === line)
    if (!struck) throw new Refused(`Review ${number} has no line ${line}.`)
    if (struck.struck) throw new Refused(`Line ${line} is struck already.`)
    const action =
      struck.action === null
        ? null
        : await tx.action.findFirst({ where: { programmeId, number: struck.action } })
    return { review, struck, action }
  },
  decide({ review, struck, action }, { instead, reason: why }, { newId }) {
    if (action && action.outcome !== 'withdrawn')
      throw new Refused(`Line ${struck.number} is action ${action.number}. Withdraw the action first.`)
    if (action && instead)
      throw new Refused('Write the other action as a line of its own: it has an owner and a date.', {
        instead: 'Leave this empty.',
      })
    const written = instead ? { id: newId(), line: nextLine(review), text: instead } : null
    return {
      change: { review: review.number, struck, written, why },
      record: {
        review: review.number,
        line: struck.number,
        kind: struck.kind,
        about: struck.about && { kind: struck.about.kind, key: struck.about.key },
        text: struck.text,
        instead: written,
        reason: why,
      },
    }
  },
  async apply(tx, { review, struck, written, why }, { programmeId, actor, now }) {
    await tx.minuteLine.update({
      where: { programmeId_review_number: { programmeId, review, number: struck.number } },
      data: { struckById: actor.personId, struckAt: now, struckWhy: why },
    })
    if (written)
      await tx.minuteLine.create({
        data: {
          id: written.id,
          programmeId,
          review,
          number: written.line,
          kind: struck.kind,
          about: struck.about ? { kind: struck.about.kind, key: struck.about.key } : Prisma.DbNull,
          text: written.text,
          corrects: struck.number,
          authorId: actor.personId,
          at: now,
        },
      })
  },
})
