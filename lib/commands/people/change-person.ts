import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { department, emailAddress, id, line } from '@/lib/commands/inputs'
import { rights } from '@/lib/commands/people/add-person'
import { loadPerson } from '@/lib/commands/people/load-person'
import { Refused } from '@/shared/refused'

/** Changes a person's name, address or rights. Their sessions end when the rights change. */
export const changePerson = defineCommand({
  name: 'change-person',
  input: z.strictObject({
    personId: id,
    email: emailAddress,
    name: line('The name', 80),
    rights,
    /** Left as it is where it is not said. */
    worksDepartment: department.nullable().optional(),
  }),
  load: async (tx, { personId, email }) => ({
    ...(await loadPerson(tx, personId)),
    twin: await tx.person.findFirst({ where: { email, id: { not: personId } }, select: { name: true } }),
    memberships: await tx.membership.count({ where: { personId } }),
  }),
  decide({ person, isLastAdministrator, twin, memberships }, { email, name, rights: as, worksDepartment }) {
    if (twin) throw new Refused(`${twin.name} has this address already.`, { email: 'This address is taken.' })
    if (isLastAdministrator && as !== 'administrator')
      throw new Refused('This is the only administrator. Make somebody else one first.')
    if (as !== 'member' && memberships > 0)
      throw new Refused(
        `${person.name} belongs to programmes. An auditor or administrator belongs to none; take them out first.`,
      )
    const ofTheWorks = worksDepartment === undefined ? person.worksDepartment : worksDepartment
    const changed = {
      email,
      name,
      auditor: as === 'auditor',
      administrator: as === 'administrator',
      worksDepartment: as === 'member' ? ofTheWorks : null,
    }
    const rightsChanged = changed.auditor !== person.auditor || changed.administrator !== person.administrator
    const credentialEpoch = person.credentialEpoch + (rightsChanged ? 1 : 0)
    return {
      change: { id: person.id, data: { ...changed, credentialEpoch } },
      record: {
        personId: person.id,
        before: { name: person.name, email: person.email, worksDepartment: person.worksDepartment },
        name,
        email,
        rights: as,
        worksDepartment: changed.worksDepartment,
      },
    }
  },
  async apply(tx, { id: key, data }) {
    await tx.person.update({ where: { id: key }, data })
  },
})
