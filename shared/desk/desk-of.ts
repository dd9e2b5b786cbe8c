import type { Actor } from '@/shared/actor'
import { openTasksOf } from '@/shared/gate/open-tasks'
import type { OpenTask } from '@/shared/gate/open-task'
import type { Judgement } from '@/shared/gate/judgement'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { comingDue } from './coming-due'
import { deskKey, type DeskEntry } from './desk-entry'
import { nonconformitiesWaiting, type NonconformityAtWork } from './nonconformities-waiting'
import { recordsWaiting } from './records-waiting'
import { waitingFor } from './waiting-for'
import { valuesForLater, workAtHand } from './work-at-hand'

/** What one programme lays on a person's desk: by what is possible now. */
export function deskEntriesOf(
  actor: Actor,
  state: ProgrammeState,
  judgement: Judgement,
  nonconformities: readonly NonconformityAtWork[] = [],
): DeskEntry[] {
  const entries = [
    ...nonconformitiesWaiting(actor, nonconformities),
    ...openTasksOf(actor, state, judgement).map(asEntry),
    ...actor.departments.flatMap((department) => [
      ...workAtHand(department, judgement),
      ...recordsWaiting(department, state.facts),
      ...comingDue(department, state, judgement),
      ...waitingFor(department, actor, state, judgement),
    ]),
  ]
  return [...new Map(entries.map((entry) => [deskKey(entry), entry])).values()]
}

/** Values of later stages that a person's departments have still to specify. */
export const valuesForLaterOf = ({ departments }: Actor, judgement: Judgement): number =>
  departments.reduce((count, department) => count + valuesForLater(department, judgement), 0)

/** The cause of a signal keeps nobody from their work yet; everything else that is asked for by name does. */
const asEntry = (task: OpenTask): DeskEntry => ({
  ...task,
  bearing: task.verb === 'find the cause' ? 'own work' : 'others wait',
})
