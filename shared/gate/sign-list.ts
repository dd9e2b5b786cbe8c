import { heldTo, type Actor } from '@/shared/actor'
import type { Department } from '@/shared/plan/department'
import { STAGES, type Stage } from '@/shared/plan/stage'
import { confirmableBy, confirmationRefusal } from './confirmation'
import type { ItemState } from './item-status'
import type { Judgement } from './judgement'
import type { ApprovalEntry, ProgrammeState } from './programme-state'
import { approvalRefusal } from './separation'

/** An item that this person can approve now. */
export interface ToSign {
  readonly item: ItemState
  /** Their own lapsed approval, where a change left it as it was in substance. */
  readonly confirms: ApprovalEntry | undefined
  /** Why a lapsed approval must be given again; undefined for a first one. */
  readonly again: string | undefined
}

/** The items of one stage that a department is asked to approve. */
export interface SignList {
  readonly stage: Stage
  readonly toSign: readonly ToSign[]
  /** Those that cannot be approved by this person now, each with the first reason. */
  readonly notNow: readonly { readonly item: ItemState; readonly why: string }[]
  readonly signed: readonly { readonly item: ItemState; readonly approval: ApprovalEntry }[]
}

/** The items that a person can approve for a department now, over all stages. */
export const approvableBy = (
  actor: Actor,
  department: Department,
  state: ProgrammeState,
  { items }: Judgement,
): ItemState[] =>
  items.filter(
    (item) =>
      item.item.definition.approvers.includes(department) && !refusedTo(actor, item, state, department),
  )

/** Why this actor cannot approve an item now: for what they did themselves, or for what they stand in for did. */
export const refusedTo = (
  actor: Actor,
  item: ItemState,
  state: ProgrammeState,
  department: Department,
): string | undefined =>
  heldTo(actor)
    .map((id) => approvalRefusal(item, state, id, department))
    .find((why) => why !== undefined)

/** What one person can approve for a department, of each stage in turn; what is not applicable is left out. */
export const signListsOf = (
  state: ProgrammeState,
  judgement: Judgement,
  actor: Actor,
  department: Department,
): SignList[] => STAGES.map((stage) => signListOf(stage, state, judgement, actor, department))

function signListOf(
  stage: Stage,
  state: ProgrammeState,
  judgement: Judgement,
  actor: Actor,
  department: Department,
): SignList {
  const asked = judgement.items
    .filter(({ item }) => item.definition.stage === stage && !item.tailoredOut?.agreed)
    .filter(({ item }) => item.definition.approvers.includes(department))
    .map((item) => ({ item, own: item.approvals.find((entry) => entry.department === department) }))
  const open = asked
    .filter(({ own }) => !own?.holds)
    .map((entry) => ({ ...entry, why: refusedTo(actor, entry.item, state, department) }))
  return {
    stage,
    toSign: open
      .filter(({ why }) => why === undefined)
      .map(({ item, own }) =>
        toSign(item, own?.approval ?? undefined, judgement, actor.personId, department),
      ),
    notNow: open.flatMap(({ item, why }) => (why === undefined ? [] : [{ item, why }])),
    signed: asked.flatMap(({ item, own }) =>
      own?.holds && own.approval ? [{ item, approval: own.approval }] : [],
    ),
  }
}

function toSign(
  item: ItemState,
  before: ApprovalEntry | undefined,
  { findings }: Judgement,
  personId: string,
  department: Department,
): ToSign {
  if (!before) return { item, confirms: undefined, again: undefined }
  const confirms = confirmableBy(personId, department, item, findings)
  if (confirms) return { item, confirms, again: undefined }
  const again =
    confirmationRefusal(before, item, findings) ??
    `${before.personName} gave it before; only they confirm it.`
  return { item, confirms, again }
}

/** The stage to begin with: the first in which something can be signed, or else the first that waits at all. */
export const stageToSign = (lists: readonly SignList[]): Stage =>
  (lists.find(({ toSign }) => toSign.length > 0) ?? lists.find(({ notNow }) => notNow.length > 0) ?? lists[0])
    ?.stage ?? 'specification'
