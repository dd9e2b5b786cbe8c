import type { Actor } from '@/shared/actor'
import { waitsFor } from '@/shared/gate/action-status'
import { CONCESSION_STANDINGS, concessionStatus } from '@/shared/gate/concession'
import { nextSignatory } from '@/shared/gate/gate'
import type { Judgement } from '@/shared/gate/judgement'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { isLater, STAGE_NAMES } from '@/shared/plan/stage'
import type { DeskEntry } from './desk-entry'
import { stageAtWork } from '@/shared/gate/stage-at-work'

/** What a department has done its part of and now waits for others with. */
export const waitingFor = (
  department: Department,
  actor: Actor,
  state: ProgrammeState,
  judgement: Judgement,
): DeskEntry[] => [
  ...actionsAway(department, state),
  ...approvalsAway(department, judgement),
  ...concessionsAway(department, actor, state, judgement),
  ...gatesAway(department, judgement),
]

const waiting = (
  department: Department,
  whom: readonly Department[],
  about: Pick<DeskEntry, 'verb' | 'message' | 'place'> & Partial<DeskEntry>,
): DeskEntry => ({
  bearing: 'I wait',
  department,
  dueOn: null,
  waitsFor: whom.map((one) => DEPARTMENT_NAMES[one]).join(' and '),
  ...about,
})

const actionsAway = (department: Department, { actions }: ProgrammeState): DeskEntry[] =>
  actions.flatMap((action) => {
    const { number, from, to, question: message, dueOn } = action
    const place = { kind: 'action', number } as const
    switch (waitsFor(action)) {
      case 'answer':
        return from === department
          ? [waiting(department, [to], { verb: 'answer', message, dueOn, place })]
          : []
      case 'acceptance':
        return to === department ? [waiting(department, [from], { verb: 'accept', message, place })] : []
      case 'nothing':
        return []
    }
  })

/** Own items of the stage at work, or before it, that only signatures of others keep open. */
function approvalsAway(department: Department, judgement: Judgement): DeskEntry[] {
  const now = stageAtWork(judgement)
  return judgement.items.flatMap(({ item: { definition }, openPoints, approvals }) => {
    const isReady = openPoints.length > 0 && openPoints.every(({ kind }) => kind === 'approval')
    const missing = approvals.flatMap((entry) =>
      entry.holds || entry.department === department ? [] : [entry.department],
    )
    if (definition.owner !== department || isLater(definition.stage, now) || !isReady || missing.length === 0)
      return []
    const place = { kind: 'item', item: definition.key, part: 'approvals' } as const
    return [waiting(department, missing, { verb: 'approve', message: definition.title, place })]
  })
}

const concessionsAway = (
  department: Department,
  { personId }: Actor,
  { concessions, facts }: ProgrammeState,
  { findings }: Judgement,
): DeskEntry[] =>
  concessions.flatMap((concession) => {
    const status = concessionStatus(concession, findings.get(concession.rule), facts)
    const missing = (['design', 'quality'] as const).filter((one) => !concession[one] && one !== department)
    if (!CONCESSION_STANDINGS[status].waits || concession.requestedById !== personId || missing.length === 0)
      return []
    const place = { kind: 'concession', number: concession.number } as const
    return [waiting(department, missing, { verb: 'decide', message: concession.why, place })]
  })

const gatesAway = (department: Department, { gates }: Judgement): DeskEntry[] =>
  gates.flatMap((gate) => {
    const next = nextSignatory(gate)
    const signed = gate.signatures.some((entry) => entry.department === department && entry.holds)
    if (!next || next === department || !signed) return []
    const message = `The ${STAGE_NAMES[gate.stage].toLowerCase()} gate`
    return [
      waiting(department, [next], { verb: 'sign', message, place: { kind: 'gate', stage: gate.stage } }),
    ]
  })
