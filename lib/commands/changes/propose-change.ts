import { z } from 'zod'
import { loadNotice } from '@/lib/commands/changes/load-notice'
import { defineCommand } from '@/lib/commands/command'
import { id, jsonValue, line, programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'
import { demandBoxes, limitOfDemand } from '@/lib/commands/specification/checked-requirement'
import { checkedValue, parameterNamed } from '@/lib/commands/specification/checked-value'
import type { Transaction } from '@/lib/db/transaction'
import { editRefusal } from '@/shared/gate/change-notice'
import { targetOf, type ProposedChange } from '@/shared/gate/proposed-change'
import { sameValue } from '@/shared/plan/same-value'
import type { Authority } from '@/shared/plan/requirement'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

const typedChange = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('value'),
    parameter: line('The parameter'),
    value: jsonValue,
    seen: wholeNumber('The revision', 0, 1_000_000),
  }),
  z.strictObject({ kind: z.literal('requirement'), ...demandBoxes }),
  z.strictObject({ kind: z.literal('withdrawal'), requirement: id }),
])
type TypedChange = z.output<typeof typedChange>

/** Puts one change into an open notice; one that the notice holds of the same thing is replaced. */
export const proposeChange = defineCommand({
  name: 'propose-change',
  input: z.strictObject({
    programme: programmeCode,
    notice: wholeNumber('The change notice', 1, 1_000_000),
    change: typedChange,
    reason,
  }),
  async load(tx, { notice: number, change }, context) {
    const notice = await loadNotice(tx, context, number)
    return { notice, ...(await changeMeant(tx, context.programmeId, change)) }
  },
  decide({ notice, change, before }, { reason: why }, { newId }) {
    const refused = editRefusal(notice)
    if (refused) throw new Refused(refused)
    const replaced = notice.changes.find((entry) => targetOf(entry.change) === targetOf(change))
    const { kind, ...content } = change
    const row = { id: newId(), notice: notice.number, kind, content, reason: why }
    return {
      change: { row, replaced: replaced?.id },
      record: {
        id: row.id,
        notice: notice.number,
        change: { ...change },
        before,
        replaces: replaced?.id ?? null,
        reason: why,
      },
      result: { change: row.id },
    }
  },
  async apply(tx, { row, replaced }, { programmeId, actor, now }) {
    if (replaced)
      await tx.noticeChange.update({
        where: { id: replaced },
        data: { droppedById: actor.personId, droppedAt: now },
      })
    await tx.noticeChange.create({
      data: { ...row, content: row.content as object, programmeId, authorId: actor.personId, at: now },
    })
  },
})

/** The change as a notice holds it, and the value it would replace. */
async function changeMeant(
  tx: Transaction,
  programmeId: string,
  typed: TypedChange,
): Promise<{ change: ProposedChange; before: JsonValue }> {
  switch (typed.kind) {
    case 'value':
      return valueMeant(tx, programmeId, typed)
    case 'requirement':
      limitOfDemand(typed, 'change.')
      return { change: typed, before: null }
    case 'withdrawal': {
      const standing = await tx.requirement.findFirst({
        where: { id: typed.requirement, programmeId, withdrawnAt: null },
      })
      if (!standing) throw new Refused('This requirement does not stand any more.')
      const { limit, authority, document, value } = standing
      return { change: { ...typed, limit, authority: authority as Authority, document, value }, before: null }
    }
  }
}

async function valueMeant(
  tx: Transaction,
  programmeId: string,
  { kind, parameter: key, value, seen }: Extract<TypedChange, { kind: 'value' }>,
): Promise<{ change: ProposedChange; before: JsonValue }> {
  const parameter = parameterNamed(key)
  const current = await tx.revision.findFirst({
    where: { programmeId, parameter: key },
    orderBy: { number: 'desc' },
  })
  const number = current?.number ?? 0
  if (number !== seen)
    throw new Refused(
      `${parameter.label} was revised meanwhile (revision ${number}, “${current?.reason ?? ''}”). What you typed is still here; send it again to propose it all the same.`,
      { seen: String(number) },
    )
  const clean = checkedValue(parameter, value)
  if (current && sameValue(current.value, clean))
    throw new Refused('This is the value it has already. Nothing was proposed.')
  return {
    change: { kind, parameter: key, value: clean, seen },
    before: (current?.value as JsonValue | undefined) ?? null,
  }
}
