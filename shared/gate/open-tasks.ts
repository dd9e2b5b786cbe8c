import type { Department } from '@/shared/plan/department'
import { isLater, STAGE_NAMES, STAGES, type Stage } from '@/shared/plan/stage'
import { heldTo, type Actor } from '@/shared/actor'
import { waitsFor } from './action-status'
import { CONCESSION_STANDINGS, concessionStatus } from './concession'
import { gateRefusal } from './gate'
import type { Judgement } from './judgement'
import { openSignals } from './open-signals'
import type { OpenTask } from './open-task'
import type { ProgrammeState } from './programme-state'
import { concessionGrantRefusal, gateSignatoryRefusal } from './separation'
import { approvableBy } from './sign-list'
import { stageAtWork } from './stage-at-work'

/** What waits for a person in one programme, from the facts as judged. */
export const openTasksOf = (actor: Actor, state: ProgrammeState, judgement: Judgement): OpenTask[] =>
  actor.departments.flatMap((department) => [
    ...openActions(department, actor, state),
    ...openSignals(department, state, judgement),
    ...openApprovals(department, actor, state, judgement),
    ...openConcessions(department, actor, state, judgement),
    ...openTailorings(department, actor, state),
    ...openGates(department, actor, state, judgement),
  ])

function openActions(department: Department, actor: Actor, state: ProgrammeState): OpenTask[] {
  return state.actions.flatMap((action): OpenTask[] => {
    const { number, question, dueOn } = action
    const openTasks = { message: question, department, dueOn, place: { kind: 'action', number } } as const
    switch (waitsFor(action)) {
      case 'answer':
        return action.to === department ? [{ verb: 'answer', ...openTasks }] : []
      case 'acceptance': {
        const mayAccept =
          action.from === department && !heldTo(actor).some((id) => id === action.answeredById)
        return mayAccept ? [{ verb: 'accept', ...openTasks }] : []
      }
      case 'nothing':
        return []
    }
  })
}

/**
 * Items of one stage that can be approved are one task, since they are signed as one list. Those of a stage after the one
 * at work can wait: of them only what does not apply is ready yet.
 */
const openApprovals = (
  department: Department,
  actor: Actor,
  state: ProgrammeState,
  judgement: Judgement,
): OpenTask[] =>
  STAGES.filter((stage) => !isLater(stage, stageAtWork(judgement))).flatMap((stage): OpenTask[] => {
    const items = approvableBy(actor, department, state, judgement).filter(
      ({ item }) => item.definition.stage === stage,
    )
    const [first, ...others] = items
    if (!first) return []
    const isAgain = items.some(({ approvals }) =>
      approvals.some((entry) => entry.department === department && entry.approval),
    )
    const { key, title } = first.item.definition
    const common = { verb: isAgain ? 'approve again' : 'approve', department, dueOn: null } as const
    return others.length > 0
      ? [{ ...common, message: listName(items.length, stage), place: { kind: 'sign list', stage } }]
      : [{ ...common, message: title, place: { kind: 'item', item: key, part: 'approvals' } }]
  })

const listName = (count: number, stage: Stage): string =>
  `${count} items of the ${STAGE_NAMES[stage].toLowerCase()} stage`

const openConcessions = (
  department: Department,
  actor: Actor,
  state: ProgrammeState,
  judgement: Judgement,
): OpenTask[] =>
  state.concessions
    .filter(
      (entry) =>
        CONCESSION_STANDINGS[concessionStatus(entry, judgement.findings.get(entry.rule), state.facts)].waits,
    )
    .filter((entry) => !heldTo(actor).some((id) => concessionGrantRefusal(entry, id, department)))
    .map(({ number, why }) => ({
      verb: 'decide',
      message: why,
      department,
      dueOn: null,
      place: { kind: 'concession', number },
    }))

const openTailorings = (department: Department, actor: Actor, state: ProgrammeState): OpenTask[] =>
  department !== 'quality'
    ? []
    : state.items
        .filter(
          ({ tailoredOut }) =>
            tailoredOut && !tailoredOut.agreed && !heldTo(actor).includes(tailoredOut.proposedById),
        )
        .map(({ definition }) => ({
          verb: 'decide',
          message: `Not applicable? ${definition.title}`,
          department,
          dueOn: null,
          place: { kind: 'item', item: definition.key },
        }))

const openGates = (
  department: Department,
  actor: Actor,
  state: ProgrammeState,
  judgement: Judgement,
): OpenTask[] =>
  judgement.gates
    .filter(
      (gate) =>
        !gateRefusal(gate, department) &&
        !heldTo(actor).some((id) =>
          gateSignatoryRefusal(gate, judgement.items, state.concessions, id, department),
        ),
    )
    .map(({ stage }) => ({
      verb: 'sign',
      message: `The ${STAGE_NAMES[stage].toLowerCase()} gate`,
      department,
      dueOn: null,
      place: { kind: 'gate', stage },
    }))
