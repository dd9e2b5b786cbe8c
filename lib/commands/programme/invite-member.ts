import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { department, emailAddress, programmeCode } from '@/lib/commands/inputs'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { Refused } from '@/shared/refused'

export const inviteMember = defineCommand({
  name: 'invite-member',
  input: z.strictObject({ programme: programmeCode, email: emailAddress, department }),
  load: (tx, { email }, { programmeId }) =>
    tx.person.findUnique({
      where: { email },
      select: {
        id: true,
        name: true,
        auditor: true,
        administrator: true,
        disabledAt: true,
        memberships: { where: { programmeId }, select: { department: true } },
      },
    }),
  decide(person, { email, department: wanted }) {
    if (!person || person.disabledAt) {
      const message = `Nobody with the address ${email} can sign in here. An administrator adds people.`
      throw new Refused(message, { email: message })
    }
    if (person.auditor || person.administrator) {
      throw new Refused(
        `${person.name} is ${person.auditor ? 'an auditor' : 'an administrator'} and takes no part in a programme’s decisions.`,
      )
    }
    if (person.memberships.some((membership) => membership.department === wanted)) {
      throw new Refused(`${person.name} is in ${DEPARTMENT_NAMES[wanted]} already.`)
    }
    return {
      change: { personId: person.id, department: wanted },
      record: { person: person.name, personId: person.id, department: wanted },
    }
  },
  async apply(tx, { personId, department: wanted }, { programmeId, now }) {
    await tx.membership.create({ data: { programmeId, personId, department: wanted, since: now } })
  },
})
