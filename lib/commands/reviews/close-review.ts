import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { sha256Hex } from '@/lib/commands/inputs'
import { loadOpenReview, reviewNamed } from '@/lib/commands/reviews/load-open-review'
import { loadJudged } from '@/lib/commands/signatures/load-judged'
import { openBeside } from '@/lib/programme/open-beside'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { Refused } from '@/shared/refused'
import { agendaOf } from '@/shared/reviews/agenda'
import { minutesContentOf } from '@/shared/reviews/minutes-content'

/** The chair signs the minutes as they stand; `digest` is what they had before them. From then on nothing changes. */
export const closeReview = defineCommand({
  name: 'close-review',
  input: z.strictObject({ ...reviewNamed, digest: sha256Hex }),
  async load(tx, { review: number }, context) {
    const review = await loadOpenReview(tx, context.programmeId, number)
    const { state, judgement } = await loadJudged(tx, context)
    const agenda = agendaOf(state, judgement, await openBeside(tx, context.programmeId))
    return { review, cover: minutesContentOf(state.programme.code, review, agenda) }
  },
  subject: ({ review }) => review,
  decide({ review: { number, title, lines }, cover }, { digest }) {
    if (lines.every(({ kind, struck }) => struck || kind === 'point'))
      throw new Refused('There is nothing minuted yet: no note, no decision, no action.')
    if (nativeSha256(cover) !== digest)
      throw new Refused(
        'The minutes, or what is open, changed since you opened them. Read them again before you sign.',
      )
    return {
      change: { number, digest, cover },
      record: {
        review: number,
        title,
        lines: lines.length,
        meaning: 'signs the minutes as they stand',
        digest,
        cover: JSON.parse(cover),
      },
    }
  },
  async apply(tx, { number, digest, cover }, { programmeId, actor, now }) {
    await tx.review.update({
      where: { programmeId_number: { programmeId, number } },
      data: { closedById: actor.personId, closedByName: actor.name, closedAt: now, digest, cover },
    })
  },
})
