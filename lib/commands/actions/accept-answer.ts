import { z } from 'zod'
import { answerDecision } from '@/lib/commands/actions/answer-decision'
import { actionNamed } from '@/lib/commands/actions/load-action'
import { defineCommand } from '@/lib/commands/command'
import { optionalLine } from '@/lib/commands/inputs'

/** The asker takes the answer; the action is closed. */
export const acceptAnswer = defineCommand({
  name: 'accept-answer',
  input: z.strictObject({ ...actionNamed, comment: optionalLine('The comment', 1000) }),
  ...answerDecision('accepted'),
})
