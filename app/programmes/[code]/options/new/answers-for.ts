import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { answerInWords } from '@/shared/gate/answer-in-words'

/** An answered action that an alternative may rest on, in one line. */
export interface AnswerToCite {
  readonly number: number
  readonly says: string
}

/** The answered actions of an item: what other departments said that it would cost and take. */
export const answersFor = (view: ProgrammeView, itemKey: string): AnswerToCite[] =>
  view.state.actions.flatMap(({ number, question, answer, itemKey: about, outcome }) =>
    answer && about === itemKey && outcome !== 'withdrawn'
      ? [{ number, says: `${question} – ${answerInWords(answer)}` }]
      : [],
  )
