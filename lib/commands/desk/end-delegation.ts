import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id } from '@/lib/commands/inputs'
import { loadPerson } from '@/lib/commands/people/load-person'
import { Refused } from '@/shared/refused'

/** Ends a standing in before its last day, or before its first; by either of the two. */
export const endDelegation = defineCommand({
  name: 'end-delegation',
  input: z.strictObject({ delegation: id }),
  async load(tx, { delegation: key }) {
    const delegation = await tx.delegation.findFirst({ where: { id: key, endedAt: null } })
    if (!delegation) throw new Refused('This has ended already.')
    const { person } = await loadPerson(tx, delegation.personId)
    const { person: delegate } = await loadPerson(tx, delegation.delegateId)
    return { delegation, person, delegate }
  },
  subject: ({ delegation: { personId, delegateId } }) => ({ personId, delegateId }),
  decide: ({ delegation, person, delegate }) => ({
    change: { id: delegation.id },
    record: {
      delegation: delegation.id,
      person: person.name,
      personId: person.id,
      delegate: delegate.name,
      delegateId: delegate.id,
    },
  }),
  async apply(tx, { id: key }, { actor, now }) {
    await tx.delegation.update({ where: { id: key }, data: { endedAt: now, endedById: actor.personId } })
  },
})
