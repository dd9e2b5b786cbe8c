import { answerDecision } from '@/shared/commands/actions/answer-decision'

export const acceptAnswer = answerDecision({
  label: 'Accept an answer',
  done: 'Accepted an answer',
  decides: 'accepts',
})
