import type { ActionEntry } from './programme-state'

/** What each status of an action means to the two departments. */
const ACTION_STANDINGS = {
  unanswered: { waitsFor: 'answer', hasAnswerToCite: false },
  answered: { waitsFor: 'acceptance', hasAnswerToCite: true },
  returned: { waitsFor: 'answer', hasAnswerToCite: true },
  accepted: { waitsFor: 'nothing', hasAnswerToCite: true },
  withdrawn: { waitsFor: 'nothing', hasAnswerToCite: false },
} as const satisfies Record<string, ActionMeaning>
export type ActionStatus = keyof typeof ACTION_STANDINGS

interface ActionMeaning {
  /** The asked department's answer, or the asker's word on it. */
  readonly waitsFor: 'answer' | 'acceptance' | 'nothing'
  /** Whether other decisions may name its answer. */
  readonly hasAnswerToCite: boolean
}

type Told = Pick<ActionEntry, 'answer' | 'outcome'>

/** How an action stands, in words. */
export function actionStatus({ answer, outcome }: Told): ActionStatus {
  if (outcome) return outcome
  return answer ? 'answered' : 'unanswered'
}

export const waitsFor = (action: Told): ActionMeaning['waitsFor'] =>
  ACTION_STANDINGS[actionStatus(action)].waitsFor

/** Nothing more is expected of anybody. */
export const isClosed = (action: Told): boolean => waitsFor(action) === 'nothing'

/** The asked department still owes an answer. */
export const wantsAnswer = (action: Told): boolean => waitsFor(action) === 'answer'

export const hasAnswerToCite = (action: Told): boolean =>
  ACTION_STANDINGS[actionStatus(action)].hasAnswerToCite
