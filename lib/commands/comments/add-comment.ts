import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, line, paragraph, programmeCode } from '@/lib/commands/inputs'
import { memberNames } from '@/lib/commands/reviews/attendance'
import { knownSubject } from '@/lib/commands/reviews/known-subject'
import { Refused } from '@/shared/refused'
import { COMMENTED_KINDS } from '@/shared/reviews/review'

/** A remark beside an item, a finding or a value, for people it names. */
export const addComment = defineCommand({
  name: 'add-comment',
  input: z.strictObject({
    programme: programmeCode,
    about: z.strictObject({
      kind: z.enum(COMMENTED_KINDS, { error: 'Choose an item, a finding or a value.' }),
      key: line('What the comment is about', 200),
    }),
    text: paragraph('The comment'),
    mentions: z.array(id).max(20, 'At most 20 people.'),
  }),
  load: async (tx, { about }, { programmeId }) => ({
    about: await knownSubject(tx, programmeId, about),
    names: await memberNames(tx, programmeId),
    newest: (await tx.comment.aggregate({ where: { programmeId }, _max: { number: true } }))._max.number ?? 0,
  }),
  decide({ about, names, newest }, { text, mentions }, { newId }) {
    const mentioned = [...new Set(mentions)].map((personId) => {
      const name = names.get(personId)
      if (name === undefined)
        throw new Refused('Only members of the programme can be named.', { mentions: 'Not a member.' })
      return { personId, name }
    })
    const comment = { id: newId(), number: newest + 1, text }
    return {
      change: {
        ...comment,
        aboutKind: about.kind,
        aboutKey: about.key,
        mentions: mentioned.map(({ personId }) => personId),
      },
      record: { ...comment, about: { ...about }, mentioned },
      result: { comment: comment.number },
    }
  },
  async apply(tx, comment, { programmeId, actor, now }) {
    await tx.comment.create({ data: { ...comment, programmeId, authorId: actor.personId, at: now } })
  },
})
