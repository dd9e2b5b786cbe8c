import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, programmeCode, sha256Hex } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

/** Lets a machine push readings into this programme's logs. The token itself is shown once and never stored. */
export const createMachineToken = defineCommand({
  name: 'create-machine-token',
  input: z.strictObject({
    programme: programmeCode,
    name: line('The machine’s name', 60),
    tokenHash: sha256Hex,
  }),
  load: (tx, { name }, { programmeId }) =>
    tx.machineToken.findFirst({ where: { programmeId, name, revokedAt: null } }),
  decide(twin, { name, tokenHash }, { newId }) {
    if (twin)
      throw new Refused(`${name} has a token already. Stop that one first.`, {
        name: 'This name has a token already.',
      })
    const token = { id: newId(), name, tokenHash }
    return { change: token, record: { token: token.id, name, tokenHash }, result: { token: token.id } }
  },
  async apply(tx, token, { programmeId, actor, now }) {
    await tx.machineToken.create({
      data: { ...token, programmeId, createdById: actor.personId, createdAt: now },
    })
  },
})
