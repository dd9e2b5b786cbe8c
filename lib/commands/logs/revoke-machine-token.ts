import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, programmeCode } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

export const revokeMachineToken = defineCommand({
  name: 'revoke-machine-token',
  input: z.strictObject({ programme: programmeCode, token: id }),
  load: (tx, { token }, { programmeId }) =>
    tx.machineToken.findFirst({ where: { id: token, programmeId, revokedAt: null } }),
  decide(token) {
    if (!token) throw new Refused('This token is stopped already.')
    return { change: { id: token.id }, record: { token: token.id, name: token.name } }
  },
  async apply(tx, { id: key }, { now }) {
    await tx.machineToken.update({ where: { id: key }, data: { revokedAt: now } })
  },
})
