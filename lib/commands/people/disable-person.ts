import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, reason } from '@/lib/commands/inputs'
import { loadPerson } from '@/lib/commands/people/load-person'
import { Refused } from '@/shared/refused'

/** A person can no longer sign in; their sessions end at once. What they signed stays. */
export const disablePerson = defineCommand({
  name: 'disable-person',
  input: z.strictObject({ personId: id, reason }),
  load: (tx, { personId }) => loadPerson(tx, personId),
  subject: (_person, { personId }) => ({ personId }),
  decide({ person, isLastAdministrator }, { reason: why }, { now }) {
    if (person.disabledAt) throw new Refused(`${person.name} cannot sign in already.`)
    if (isLastAdministrator)
      throw new Refused('This is the only administrator. Make somebody else one first.')
    return {
      change: { id: person.id, data: { disabledAt: now, credentialEpoch: person.credentialEpoch + 1 } },
      record: { person: person.name, personId: person.id, reason: why },
    }
  },
  async apply(tx, { id: key, data }) {
    await tx.person.update({ where: { id: key }, data })
  },
})
