import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { loadPerson } from '@/lib/commands/people/load-person'

/** A person's own new password, hashed by the caller, who has checked the old one. Other sessions end. */
export const changeOwnPassword = defineCommand({
  name: 'change-own-password',
  input: z.strictObject({ passwordHash: z.string().min(20) }),
  load: (tx, _input, { actor }) => loadPerson(tx, actor.personId),
  decide({ person }, { passwordHash }) {
    return {
      change: {
        id: person.id,
        data: {
          passwordHash,
          mustChangePassword: false,
          oneTimePasswordUntil: null,
          credentialEpoch: person.credentialEpoch + 1,
        },
      },
      record: { person: person.name },
      result: { credentialEpoch: person.credentialEpoch + 1 },
    }
  },
  async apply(tx, { id, data }) {
    await tx.person.update({ where: { id }, data })
  },
})
