import type { Actor } from '@/shared/actor'
import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { department, line, optionalLine, programmeCode, sha256Hex, wholeNumber } from '@/lib/commands/inputs'
import { approvalOf } from '@/lib/commands/signatures/approval-record'
import { itemNamed, loadJudged, type Judged } from '@/lib/commands/signatures/load-judged'
import { touching } from '@/shared/commands/touching'
import { confirmationRefusal } from '@/shared/gate/confirmation'
import type { ItemState } from '@/shared/gate/item-status'
import { refusedTo } from '@/shared/gate/sign-list'
import type { Department } from '@/shared/plan/department'
import { Refused } from '@/shared/refused'

/** More items than any plan has for one department. */
const MOST = 200

/**
 * A department agrees with one signature to several items, each as it stands,
 * in one transaction: a row and an entry each, as if it had been signed alone.
 * Those named with `confirms` are lapsed approvals of the same person, which a
 * change leaves as they were in substance. `seen` is the trail's length when the
 * list was opened. Where any item cannot be signed as it was shown, nothing is.
 */
export const approveItems = defineCommand({
  name: 'approve-items',
  input: z.strictObject({
    programme: programmeCode,
    department,
    seen: wholeNumber('The length of the trail', 0, 1_000_000_000),
    items: z
      .array(
        z.strictObject({
          item: line('The item'),
          digest: sha256Hex,
          confirms: z.boolean().default(false),
        }),
      )
      .min(1, 'Tick the items that you have read.')
      .max(MOST, `At most ${MOST} items are signed at once.`)
      .refine((items) => new Set(items.map(({ item }) => item)).size === items.length, {
        error: 'An item is named twice. Load the page again.',
      }),
    comment: optionalLine('The comment', 1000),
  }),
  async load(tx, { items, seen }, context) {
    const judged = await loadJudged(tx, context)
    const since = await tx.trailEntry.findMany({
      where: { trailId: context.programmeId, seq: { gt: seen } },
      orderBy: { seq: 'asc' },
      take: 500,
      select: { command: true, payload: true, actorName: true },
    })
    const asked = items.map((entry) => ({ ...entry, itemState: itemNamed(judged, entry.item) }))
    return { ...judged, asked, since }
  },
  subject: (_state, { department: own }) => ({ department: own }),
  decide({ asked, since, ...judged }, { department: own, comment }, { actor, newId }) {
    const fields = Object.fromEntries(
      asked.flatMap(({ item, digest, confirms, itemState }) => {
        const why =
          itemState.digest === digest
            ? notNow(judged, itemState, own, actor, confirms)
            : changedSince(touching(itemState, since))
        return why ? [[`items.${item}`, why]] : []
      }),
    )
    if (Object.keys(fields).length > 0) throw nothingSigned(asked, fields)
    const approvals = asked.map(({ itemState, confirms }) =>
      approvalOf(judged, {
        id: newId(),
        itemState,
        department: own,
        comment,
        ...(confirms && { confirms: newestOf(itemState, own) }),
      }),
    )
    return {
      change: approvals.map(({ row }) => row),
      acts: approvals.map(({ record }) => ({
        command: 'approve-item' as const,
        record: { ...record, list: approvals.length },
      })),
      record: {
        department: own,
        stage: commonStage(asked.map(({ itemState }) => itemState)),
        approvals: approvals.map(({ row }) => ({
          approval: row.id,
          item: row.itemKey,
          digest: row.digest,
          confirms: row.confirms !== null,
        })),
        comment,
      },
      result: { signed: approvals.length },
    }
  },
  async apply(tx, approvals, { programmeId, actor, now }) {
    await tx.approval.createMany({
      data: approvals.map((row) => ({
        ...row,
        programmeId,
        personId: actor.personId,
        personName: actor.name,
        at: now,
      })),
    })
  },
})

/** Why the item, which stands as it was shown, cannot be signed. */
function notNow(
  { state, judgement }: Judged,
  itemState: ItemState,
  own: Department,
  actor: Actor,
  confirms: boolean,
): string | undefined {
  const refused = refusedTo(actor, itemState, state, own)
  if (refused || !confirms) return refused
  const approval = newestOf(itemState, own)
  if (approval?.personId !== actor.personId) return 'Only who gave an approval confirms it. Approve it again.'
  const again = confirmationRefusal(approval, itemState, judgement.findings)
  return again && `It must be approved again. ${again}`
}

const newestOf = (itemState: ItemState, own: Department) =>
  itemState.approvals.find(({ department: asked }) => asked === own)?.approval ?? undefined

const changedSince = (told: readonly string[]): string =>
  `Changed since you opened the list. ${told.join(' ')} Read it again before you sign.`

function nothingSigned(
  asked: readonly { item: string; itemState: ItemState }[],
  fields: Readonly<Record<string, string>>,
): Refused {
  const titles = asked
    .filter(({ item }) => `items.${item}` in fields)
    .map(({ itemState }) => itemState.item.definition.title)
  return new Refused(
    `Nothing was signed, for ${titles.length} of the ${asked.length} cannot be signed as shown: ${titles.join(', ')}. What stands in the way is said beside each.`,
    fields,
  )
}

/** The stage that all of them belong to, where it is one. */
function commonStage(items: readonly ItemState[]) {
  const stages = new Set(items.map(({ item }) => item.definition.stage))
  const [stage] = stages
  return stages.size === 1 && stage ? stage : null
}
