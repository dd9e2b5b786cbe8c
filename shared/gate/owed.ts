import type { Department } from '@/shared/plan/department'
import { STAGE_NAMES } from '@/shared/plan/stage'
import type { Actor } from '@/shared/actor'
import { waitsFor } from './action-standing'
import { CONCESSION_STANDINGS, concessionStanding } from './concession'
import { gateRefusal } from './gate'
import type { Judgement } from './judgement'
import { owedSignals } from './owed-signals'
import type { Owed } from './owed-work'
import type { ProgrammeState } from './programme-state'
import { approvalRefusal, concessionGrantRefusal, gateSignatoryRefusal } from './separation'

/** What waits for a person in one programme, from the facts as judged. */
export const owedBy = (actor: Actor, state: ProgrammeState, judgement: Judgement): Owed[] =>
  actor.departments.flatMap((department) => [
    ...owedActions(department, actor, state),
    ...owedSignals(department, state, judgement),
    ...owedApprovals(department, actor, state, judgement),
    ...owedConcessions(department, actor, state, judgement),
    ...owedSetAsides(department, actor, state),
    ...owedGates(department, actor, state, judgement),
  ])

function owedActions(department: Department, actor: Actor, state: ProgrammeState): Owed[] {
  return state.actions.flatMap((action): Owed[] => {
    const { number, question, dueOn } = action
    const owed = { says: question, department, dueOn, place: { kind: 'action', number } } as const
    switch (waitsFor(action)) {
      case 'answer':
        return action.to === department ? [{ verb: 'answer', ...owed }] : []
      case 'acceptance': {
        const mayAccept = action.from === department && action.answeredById !== actor.personId
        return mayAccept ? [{ verb: 'accept', ...owed }] : []
      }
      case 'nothing':
        return []
    }
  })
}

const owedApprovals = (
  department: Department,
  actor: Actor,
  state: ProgrammeState,
  judgement: Judgement,
): Owed[] =>
  judgement.items
    .filter(
      (item) =>
        item.item.definition.approvers.includes(department) &&
        !approvalRefusal(item, state, actor.personId, department),
    )
    .map(({ item, approvals }) => ({
      verb: approvals.some((entry) => entry.department === department && entry.approval)
        ? 'approve again'
        : 'approve',
      says: item.definition.title,
      department,
      dueOn: null,
      place: { kind: 'item', item: item.definition.key },
    }))

const owedConcessions = (
  department: Department,
  actor: Actor,
  state: ProgrammeState,
  judgement: Judgement,
): Owed[] =>
  state.concessions
    .filter(
      (entry) =>
        CONCESSION_STANDINGS[concessionStanding(entry, judgement.findings.get(entry.rule), state.facts.today)]
          .waits,
    )
    .filter((entry) => !concessionGrantRefusal(entry, actor.personId, department))
    .map(({ number, why }) => ({
      verb: 'decide',
      says: why,
      department,
      dueOn: null,
      place: { kind: 'concession', number },
    }))

const owedSetAsides = (department: Department, actor: Actor, state: ProgrammeState): Owed[] =>
  department !== 'quality'
    ? []
    : state.items
        .filter(({ setAside }) => setAside && !setAside.agreed && setAside.proposedById !== actor.personId)
        .map(({ definition }) => ({
          verb: 'decide',
          says: `Not applicable? ${definition.title}`,
          department,
          dueOn: null,
          place: { kind: 'item', item: definition.key },
        }))

const owedGates = (
  department: Department,
  actor: Actor,
  state: ProgrammeState,
  judgement: Judgement,
): Owed[] =>
  judgement.gates
    .filter(
      (gate) =>
        !gateRefusal(gate, department) &&
        !gateSignatoryRefusal(gate, judgement.items, state.concessions, actor.personId, department),
    )
    .map(({ stage }) => ({
      verb: 'sign',
      says: `The ${STAGE_NAMES[stage].toLowerCase()} gate`,
      department,
      dueOn: null,
      place: { kind: 'gate', stage },
    }))
