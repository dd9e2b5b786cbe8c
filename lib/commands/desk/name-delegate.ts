import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id } from '@/lib/commands/inputs'
import { loadPerson } from '@/lib/commands/people/load-person'
import type { Transaction } from '@/lib/db/transaction'
import { calendarDate } from '@/shared/columns/calendar-date'
import { daysBetween } from '@/shared/quantity/calendar'
import { Refused } from '@/shared/refused'

/** Whoever is away longer hands their programmes on. */
const LONGEST_DAYS = 366

/** A person names who stands in for them, from the first day to the last. It holds in departments both belong to. */
export const nameDelegate = defineCommand({
  name: 'name-delegate',
  input: z.strictObject({
    delegate: id,
    fromOn: calendarDate('The first day'),
    toOn: calendarDate('The last day'),
  }),
  load: async (tx, { delegate }, { actor, today }) => ({
    delegate: (await loadPerson(tx, delegate)).person,
    own: await departmentsOf(tx, actor.personId),
    theirs: await departmentsOf(tx, delegate),
    away: await tx.delegation.findMany({
      where: { personId: { in: [actor.personId, delegate] }, endedAt: null, toOn: { gte: today } },
    }),
  }),
  decide({ delegate, own, theirs, away }, { fromOn, toOn }, { actor, today, newId }) {
    if (delegate.id === actor.personId) refuse('delegate', 'You cannot stand in for yourself.')
    if (delegate.disabledAt) refuse('delegate', `${delegate.name} can no longer sign in.`)
    if (toOn < fromOn) refuse('toOn', 'The last day lies before the first.')
    if (toOn < today) refuse('toOn', 'The last day has passed already.')
    if (daysBetween(fromOn, toOn) > LONGEST_DAYS)
      refuse('toOn', `At most ${LONGEST_DAYS} days. Whoever is away longer hands their programmes on.`)
    const shared = own.filter((department) => theirs.includes(department))
    if (shared.length === 0)
      refuse('delegate', `${delegate.name} belongs to no department of yours, in any programme.`)
    const same = away.filter((entry) => entry.fromOn <= toOn && fromOn <= entry.toOn)
    if (same.some(({ personId }) => personId === actor.personId))
      refuse('fromOn', 'Somebody stands in for you on some of these days already. End that first.')
    if (same.some(({ personId }) => personId === delegate.id))
      refuse('delegate', `${delegate.name} is away on some of these days.`)
    const delegation = { id: newId(), personId: actor.personId, delegateId: delegate.id, fromOn, toOn }
    return {
      change: delegation,
      record: {
        delegation: delegation.id,
        person: actor.name,
        delegate: delegate.name,
        delegateId: delegate.id,
        fromOn,
        toOn,
      },
      result: { delegation: delegation.id },
    }
  },
  async apply(tx, delegation, { now }) {
    await tx.delegation.create({ data: { ...delegation, namedAt: now } })
  },
})

async function departmentsOf(tx: Transaction, personId: string): Promise<string[]> {
  const rows = await tx.membership.findMany({
    where: { personId },
    distinct: ['department'],
    select: { department: true },
  })
  return rows.map(({ department }) => department)
}

function refuse(field: string, message: string): never {
  throw new Refused(message, { [field]: message })
}
