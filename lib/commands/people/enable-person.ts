import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, reason } from '@/lib/commands/inputs'
import { loadPerson } from '@/lib/commands/people/load-person'
import { Refused } from '@/shared/refused'

/** A disabled person can sign in again. */
export const enablePerson = defineCommand({
  name: 'enable-person',
  input: z.strictObject({ personId: id, reason }),
  load: (tx, { personId }) => loadPerson(tx, personId),
  decide({ person }, { reason: why }) {
    if (!person.disabledAt) throw new Refused(`${person.name} can sign in already.`)
    return {
      change: { id: person.id, data: { disabledAt: null } },
      record: { person: person.name, personId: person.id, reason: why },
    }
  },
  async apply(tx, { id: key, data }) {
    await tx.person.update({ where: { id: key }, data })
  },
})
