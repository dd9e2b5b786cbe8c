import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { Refused } from '@/shared/refused'

/** From now on nobody reads the calendar at the address that the person had. */
export const revokeCalendarAddress = defineCommand({
  name: 'revoke-calendar-address',
  input: z.strictObject({}),
  load: (tx, _input, { actor: { personId } }) =>
    tx.calendarAddress.findFirst({ where: { personId, revokedAt: null } }),
  decide(address, _input, { actor }) {
    if (!address) throw new Refused('The address is stopped already.')
    return { change: { id: address.id }, record: { person: actor.name, address: address.id } }
  },
  async apply(tx, { id }, { now }) {
    await tx.calendarAddress.update({ where: { id }, data: { revokedAt: now } })
  },
})
