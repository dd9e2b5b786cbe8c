import type { ActionEntry } from './programme-state'

/** How an action stands, in words. */
export function actionStanding({
  answer,
  outcome,
}: ActionEntry): 'unanswered' | 'answered' | 'returned' | 'accepted' | 'withdrawn' {
  if (outcome) return outcome
  return answer ? 'answered' : 'unanswered'
}

/** Nothing more is expected of anybody. */
export const isClosed = ({ outcome }: ActionEntry): boolean =>
  outcome === 'accepted' || outcome === 'withdrawn'

/** The asked department still owes an answer. */
export const wantsAnswer = (action: ActionEntry): boolean =>
  !isClosed(action) && (!action.answer || action.outcome === 'returned')
