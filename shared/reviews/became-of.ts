import { itemHolding } from '@/shared/catalogue/standard-plan'
import { actionStatus, type ActionStatus } from '@/shared/gate/action-status'
import type { ActionAnswer } from '@/shared/gate/action-answer'
import type { CurrentRevision, ProgrammeState } from '@/shared/gate/programme-state'
import { parametersBehind } from '@/shared/gate/signed-content'
import type { MinuteLine } from './review'
import type { Subject } from './subject'

/** What became of a line of minutes after it was written. */
export interface BecameOf {
  readonly action: {
    readonly number: number
    readonly status: ActionStatus
    readonly answer: ActionAnswer | null
    readonly answeredBy: string | null
  } | null
  /** Values of what the line is about that were revised since. */
  readonly revised: readonly CurrentRevision[]
}

/** What became of a line: its action's answer, and values revised since it was written. */
export function becameOf(line: MinuteLine, state: ProgrammeState): BecameOf {
  const action = state.actions.find(({ number }) => number === line.action)
  const keys = keysOf(line.about, action?.itemKey, state)
  return {
    action: action
      ? {
          number: action.number,
          status: actionStatus(action),
          answer: action.answer,
          answeredBy: action.answeredByName,
        }
      : null,
    revised: keys.flatMap((key) => {
      const revision = state.revisions.get(key)
      return revision && revision.at > line.at ? [revision] : []
    }),
  }
}

/** Keys of the values that a line may have moved. */
function keysOf(
  about: Subject | null,
  actionItem: string | undefined,
  state: ProgrammeState,
): readonly string[] {
  if (about?.kind === 'parameter') return [about.key]
  const itemKey =
    about?.kind === 'item' || about?.kind === 'set-aside'
      ? about.key
      : about?.kind === 'finding'
        ? itemHolding.rule(about.key)?.key
        : undefined
  const item = state.items.find(({ definition }) => definition.key === (itemKey ?? actionItem))
  return item ? parametersBehind(item) : []
}
