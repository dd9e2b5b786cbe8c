import { z } from 'zod'
import { answerDecision } from '@/lib/commands/actions/answer-decision'
import { actionNamed } from '@/lib/commands/actions/load-action'
import { defineCommand } from '@/lib/commands/command'
import { paragraph } from '@/lib/commands/inputs'

/** The asker sends the answer back and says what is missing. */
export const returnAnswer = defineCommand({
  name: 'return-answer',
  input: z.strictObject({ ...actionNamed, comment: paragraph('What is missing') }),
  ...answerDecision('returned'),
})
