import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { hasAnswerToCite } from '@/shared/gate/action-status'
import { answerInWords } from '@/shared/gate/answer-in-words'

/** An answered action that an alternative may rest on, in one line. */
export interface AnswerToCite {
  readonly number: number
  readonly message: string
}

/** The answered actions of some items, asked outside any study: what other departments said that it would cost and take. */
export const answersFor = (view: ProgrammeView, items: readonly string[]): AnswerToCite[] =>
  view.state.actions.flatMap((action) =>
    action.answer && action.study === null && items.includes(action.itemKey) && hasAnswerToCite(action)
      ? [{ number: action.number, message: `${action.question} – ${answerInWords(action.answer)}` }]
      : [],
  )
