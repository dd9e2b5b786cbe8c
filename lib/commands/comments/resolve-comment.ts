import { z } from 'zod'
import { loadOpenComment } from '@/lib/commands/comments/load-comment'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode, wholeNumber } from '@/lib/commands/inputs'
import { knownSubject } from '@/lib/commands/reviews/known-subject'
import type { SubjectKind } from '@/shared/reviews/subject'

/** Nothing is left of a comment to settle. */
export const resolveComment = defineCommand({
  name: 'resolve-comment',
  input: z.strictObject({ programme: programmeCode, comment: wholeNumber('The comment', 1, 1_000_000) }),
  async load(tx, { comment: number }, { programmeId }) {
    const comment = await loadOpenComment(tx, programmeId, number)
    const { aboutKind, aboutKey } = comment
    return {
      comment,
      about: await knownSubject(tx, programmeId, { kind: aboutKind as SubjectKind, key: aboutKey }),
    }
  },
  decide: ({ comment: { id, number, text }, about }) => ({
    change: id,
    record: { comment: number, about: { ...about }, text },
  }),
  async apply(tx, id, { actor, now }) {
    await tx.comment.update({ where: { id }, data: { resolvedById: actor.personId, resolvedAt: now } })
  },
})
