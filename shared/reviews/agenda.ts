import { actionStatus, waitsFor } from '@/shared/gate/action-status'
import { CONCESSION_STANDINGS, concessionStatus } from '@/shared/gate/concession'
import { GATE_STANDINGS } from '@/shared/gate/gate'
import type { Judgement } from '@/shared/gate/judgement'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import type { Subject } from './subject'

/** One thing to talk about, as data: what it is, how it stands, and the item it belongs to. */
export interface AgendaPoint {
  readonly group: AgendaGroup
  readonly about: Subject
  /** How it stands: a verdict, or the status of an action, a proposal, a comment. */
  readonly open: string
  /** How many findings of an item are undetermined; 1 for everything else. */
  readonly count: number
  readonly item: string | null
}

export const AGENDA_GROUPS = ['findings', 'actions', 'proposals', 'comments', 'nonconformities'] as const
export type AgendaGroup = (typeof AGENDA_GROUPS)[number]

/** What is open beside a programme's judged facts. */
export interface OpenBeside {
  readonly studies: readonly { readonly number: number; readonly itemKey: string }[]
  readonly comments: readonly { readonly number: number; readonly about: Subject }[]
  readonly nonconformities: readonly { readonly number: number; readonly standing: string }[]
}

/** What a review has to talk about, from what is open now: worst first. */
export function agendaOf(state: ProgrammeState, judgement: Judgement, beside: OpenBeside): AgendaPoint[] {
  return [
    ...failing(judgement),
    ...undetermined(judgement),
    ...actions(state),
    ...proposals(state, judgement, beside),
    ...beside.comments.map(({ number, about }) => ({
      group: 'comments' as const,
      about: { kind: 'comment' as const, key: String(number) },
      open: 'open',
      count: 1,
      item: about.kind === 'item' ? about.key : null,
    })),
    ...beside.nonconformities.map(({ number, standing }) => ({
      group: 'nonconformities' as const,
      about: { kind: 'nonconformity' as const, key: String(number) },
      open: standing,
      count: 1,
      item: null,
    })),
  ]
}

const inPlan = ({ items }: Judgement) => items.filter(({ status }) => status !== 'not applicable')

function failing(judgement: Judgement): AgendaPoint[] {
  return inPlan(judgement).flatMap(({ item: { definition } }) =>
    definition.rules
      .filter(({ id }) => judgement.findings.get(id)?.verdict === 'fails')
      .map(({ id }) => ({
        group: 'findings',
        about: { kind: 'finding', key: id },
        open: 'fails',
        count: 1,
        item: definition.key,
      })),
  )
}

/** An item at a time, and of the stage at work alone: what comes later is rightly still open. */
function undetermined(judgement: Judgement): AgendaPoint[] {
  const stage = judgement.gates.find(({ status }) => !GATE_STANDINGS[status].wasOpen)?.stage
  return inPlan(judgement)
    .filter(({ item }) => item.definition.stage === stage)
    .flatMap(({ item: { definition } }) => {
      const count = definition.rules.filter(
        ({ id }) => judgement.findings.get(id)?.verdict === 'undetermined',
      ).length
      if (count === 0) return []
      return [
        {
          group: 'findings',
          about: { kind: 'item', key: definition.key },
          open: 'undetermined',
          count,
          item: definition.key,
        },
      ]
    })
}

const actions = (state: ProgrammeState): AgendaPoint[] =>
  state.actions
    .filter((action) => waitsFor(action) !== 'nothing')
    .map((action) => ({
      group: 'actions',
      about: { kind: 'action', key: String(action.number) },
      open: actionStatus(action),
      count: 1,
      item: action.itemKey,
    }))

function proposals(state: ProgrammeState, { findings }: Judgement, { studies }: OpenBeside): AgendaPoint[] {
  const proposed = (about: Subject, item: string): AgendaPoint => ({
    group: 'proposals',
    about,
    open: 'proposed',
    count: 1,
    item,
  })
  return [
    ...state.items
      .filter(({ tailoredOut }) => tailoredOut && !tailoredOut.agreed)
      .map(({ definition: { key } }) => proposed({ kind: 'set-aside', key }, key)),
    ...state.concessions
      .filter(
        (entry) => CONCESSION_STANDINGS[concessionStatus(entry, findings.get(entry.rule), state.facts)].waits,
      )
      .map(({ number, itemKey }) => proposed({ kind: 'concession', key: String(number) }, itemKey)),
    ...studies.map(({ number, itemKey }) => proposed({ kind: 'study', key: String(number) }, itemKey)),
  ]
}
