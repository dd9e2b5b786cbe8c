import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id } from '@/lib/commands/inputs'
import { loadPerson } from '@/lib/commands/people/load-person'
import { oneTimePasswordUntil } from '@/lib/auth/one-time-password'
import { Refused } from '@/shared/refused'

/** Gives a person a one-time password, hashed by the caller. Their sessions end. */
export const resetPassword = defineCommand({
  name: 'reset-password',
  input: z.strictObject({ personId: id, passwordHash: z.string().min(20) }),
  load: (tx, { personId }) => loadPerson(tx, personId),
  subject: (_person, { personId }) => ({ personId }),
  decide({ person }, { passwordHash }, { now }) {
    if (person.disabledAt) throw new Refused(`${person.name} cannot sign in. Enable them first.`)
    const until = oneTimePasswordUntil(now).toISOString()
    return {
      change: {
        id: person.id,
        data: {
          passwordHash,
          mustChangePassword: true,
          oneTimePasswordUntil: until,
          credentialEpoch: person.credentialEpoch + 1,
        },
      },
      record: { person: person.name, personId: person.id, oneTimePasswordUntil: until },
      result: { oneTimePasswordUntil: until },
    }
  },
  async apply(tx, { id: key, data }) {
    await tx.person.update({ where: { id: key }, data })
  },
})
