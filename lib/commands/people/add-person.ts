import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { emailAddress, line } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

export const RIGHTS = ['member', 'auditor', 'administrator'] as const
export const rights = z.enum(RIGHTS, { error: 'Choose member, auditor or administrator.' })

/** Adds a person. The caller hashes the one-time password beforehand and shows it once. */
export const addPerson = defineCommand({
  name: 'add-person',
  input: z.strictObject({
    email: emailAddress,
    name: line('The name', 80),
    rights,
    passwordHash: z.string().nullable(),
  }),
  load: (tx, { email }) => tx.person.findUnique({ where: { email }, select: { name: true } }),
  decide(twin, { email, name, rights: as, passwordHash }, { newId }) {
    if (twin) throw new Refused(`${twin.name} has this address already.`, { email: 'This address is taken.' })
    const person = {
      id: newId(),
      email,
      name,
      auditor: as === 'auditor',
      administrator: as === 'administrator',
    }
    return {
      change: { ...person, passwordHash, mustChangePassword: passwordHash !== null },
      record: { person: name, personId: person.id, email, rights: as },
      result: { person: person.id },
    }
  },
  async apply(tx, person, { now }) {
    await tx.person.create({ data: { ...person, createdAt: now } })
  },
})
