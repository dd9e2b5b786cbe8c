import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, programmeCode, worksSubject } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

export const revokeMachineToken = defineCommand({
  name: 'revoke-machine-token',
  input: z.strictObject({
    programme: programmeCode.optional(),
    works: worksSubject.optional(),
    token: id,
  }),
  load: (tx, { token }, { trailId }) =>
    tx.machineToken.findFirst({ where: { id: token, trailId, revokedAt: null } }),
  decide(token, { works }) {
    if (!token) throw new Refused('This token is stopped already.')
    return {
      change: { id: token.id },
      record: { ...(works && { machine: works.code }), token: token.id, name: token.name },
    }
  },
  async apply(tx, { id: key }, { now }) {
    await tx.machineToken.update({ where: { id: key }, data: { revokedAt: now } })
  },
})
