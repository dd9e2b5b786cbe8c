import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { department, emailAddress, line } from '@/lib/commands/inputs'
import { oneTimePasswordUntil } from '@/lib/auth/one-time-password'
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
    /** Their department in the works; null for whoever only takes part in programmes. */
    worksDepartment: department.nullable().default(null),
    passwordHash: z.string().nullable(),
  }),
  load: (tx, { email }) => tx.person.findUnique({ where: { email }, select: { name: true } }),
  decide(twin, { email, name, rights: as, worksDepartment, passwordHash }, { newId, now }) {
    if (twin) throw new Refused(`${twin.name} has this address already.`, { email: 'This address is taken.' })
    const person = {
      id: newId(),
      email,
      name,
      auditor: as === 'auditor',
      administrator: as === 'administrator',
      worksDepartment: as === 'member' ? worksDepartment : null,
    }
    const until = passwordHash === null ? null : oneTimePasswordUntil(now).toISOString()
    return {
      change: { ...person, passwordHash, mustChangePassword: until !== null, oneTimePasswordUntil: until },
      record: {
        person: name,
        personId: person.id,
        email,
        rights: as,
        worksDepartment: person.worksDepartment,
        oneTimePasswordUntil: until,
      },
      result: { person: person.id, ...(until && { oneTimePasswordUntil: until }) },
    }
  },
  async apply(tx, person, { now }) {
    await tx.person.create({ data: { ...person, createdAt: now } })
  },
})
