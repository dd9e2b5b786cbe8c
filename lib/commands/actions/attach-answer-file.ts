import { z } from 'zod'
import { actionNamed, loadOpenAction } from '@/lib/commands/actions/load-action'
import { defineCommand } from '@/lib/commands/command'
import { line, optionalLine, sha256Hex } from '@/lib/commands/inputs'
import { claimFile } from '@/lib/evidence/claim-file'
import { Refused } from '@/shared/refused'

/** Lays a stored file with an action's answer, before or after the answer's words, until the answer is accepted. */
export const attachAnswerFile = defineCommand({
  name: 'attach-answer-file',
  input: z.strictObject({
    ...actionNamed,
    sha256: sha256Hex,
    fileName: line('The file name', 255),
    note: optionalLine('The note', 500),
  }),
  load: async (tx, { action, sha256 }, { programmeId, actor }) => ({
    action: await loadOpenAction(tx, programmeId, action),
    stored: await claimFile(tx, sha256, { personId: actor.personId, trailId: programmeId }),
    twin: await tx.answerFile.findFirst({ where: { programmeId, action, sha256 }, select: { id: true } }),
  }),
  subject: ({ action }) => action,
  decide({ action, stored, twin }, { sha256, fileName, note }, { newId }) {
    if (!stored) throw new Refused('The file did not arrive. Upload it again.', { file: 'Upload it again.' })
    if (twin) throw new Refused('This very file lies with the answer already.')
    const file = { id: newId(), action: action.number, sha256, fileName, note }
    return {
      change: file,
      record: {
        ...file,
        item: action.itemKey,
        question: action.question,
        size: stored.size,
        mediaType: stored.mediaType,
      },
      result: { file: file.id },
    }
  },
  async apply(tx, file, { programmeId, actor, now }) {
    await tx.answerFile.create({ data: { ...file, programmeId, addedById: actor.personId, at: now } })
  },
})
