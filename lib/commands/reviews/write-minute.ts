import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { paragraph } from '@/lib/commands/inputs'
import { subjectInput } from '@/lib/commands/reviews/known-subject'
import {
  lineSubject,
  loadOpenReview,
  nextLine,
  reviewNamed,
  storedSubject,
} from '@/lib/commands/reviews/load-open-review'
import { Prisma } from '@/lib/db/generated/client'

/** One line of minutes: a point for the agenda, a note or a decision. An action is asked, and writes its own line. */
export const writeMinute = defineCommand({
  name: 'write-minute',
  input: z.strictObject({
    ...reviewNamed,
    kind: z.enum(['point', 'note', 'decision'], { error: 'Choose a point, a note or a decision.' }),
    about: subjectInput.nullable(),
    text: paragraph('The line'),
  }),
  async load(tx, { review: number, about }, { programmeId }) {
    const review = await loadOpenReview(tx, programmeId, number)
    return { review, subject: await lineSubject(tx, programmeId, review, about) }
  },
  decide({ review, subject }, { kind, text }, { newId }) {
    const line = { id: newId(), review: review.number, number: nextLine(review), kind, text }
    return {
      change: { ...line, about: storedSubject(subject) },
      record: {
        id: line.id,
        review: line.review,
        line: line.number,
        kind,
        about: subject && { ...subject },
        text,
        corrects: null,
      },
      result: { line: line.number },
    }
  },
  async apply(tx, line, { programmeId, actor, now }) {
    await tx.minuteLine.create({
      data: {
        ...line,
        about: line.about ?? Prisma.DbNull,
        programmeId,
        authorId: actor.personId,
        at: now,
      },
    })
  },
})
