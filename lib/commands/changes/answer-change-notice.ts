import { z } from 'zod'
import { loadNoticeStanding } from '@/lib/commands/changes/load-notice'
import { defineCommand } from '@/lib/commands/command'
import { department, optionalLine, programmeCode, sha256Hex, wholeNumber } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

/** A department agrees to a notice or objects, over what it proposes and turns today. */
export const answerChangeNotice = defineCommand({
  name: 'answer-change-notice',
  input: z.strictObject({
    programme: programmeCode,
    notice: wholeNumber('The change notice', 1, 1_000_000),
    department,
    answer: z.enum(['agree', 'object'], { error: 'Choose whether the department agrees.' }),
    reason: optionalLine('The reason', 1000),
    digest: sha256Hex,
  }),
  load: (tx, { notice }, context) => loadNoticeStanding(tx, context, notice),
  subject: ({ standing }, { department: own }) => ({ department: own, standing }),
  decide({ notice, standing }, { department: own, answer, reason, digest }, { newId }) {
    if (standing.digest !== digest)
      throw new Refused(
        'The notice, or what it would turn, changed since you opened it. Read it again before you answer.',
      )
    if (answer === 'object' && !reason)
      throw new Refused('Say why the department objects.', { reason: 'An objection needs its reason.' })
    const row = {
      id: newId(),
      notice: notice.number,
      department: own,
      agrees: answer === 'agree',
      reason,
      digest,
    }
    return { change: row, record: { ...row, title: notice.title } }
  },
  async apply(tx, row, { programmeId, actor, now }) {
    await tx.noticeAnswer.create({
      data: { ...row, programmeId, personId: actor.personId, personName: actor.name, at: now },
    })
  },
})
