import { answerDecision } from '@/shared/commands/actions/answer-decision'

export const returnAnswer = answerDecision({
  label: 'Return an answer',
  done: 'Returned an answer',
  decides: 'returns',
})
