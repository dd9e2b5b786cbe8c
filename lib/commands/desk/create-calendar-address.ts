import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { sha256Hex } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

/** A secret address at which a calendar asks for one's due days. It is shown once; its hash is kept. */
export const createCalendarAddress = defineCommand({
  name: 'create-calendar-address',
  input: z.strictObject({ tokenHash: sha256Hex }),
  load: (tx, _input, { actor: { personId } }) =>
    tx.calendarAddress.findFirst({ where: { personId, revokedAt: null } }),
  decide(before, { tokenHash }, { actor, newId }) {
    if (before) throw new Refused('You have an address already. Stop that one first.')
    const address = { id: newId(), tokenHash }
    return {
      change: address,
      record: { person: actor.name, address: address.id, tokenHash },
      result: { address: address.id },
    }
  },
  async apply(tx, address, { actor, now }) {
    await tx.calendarAddress.create({ data: { ...address, personId: actor.personId, createdAt: now } })
  },
})
