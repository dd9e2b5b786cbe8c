import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, sha256Hex, worksCode } from '@/lib/commands/inputs'
import { openMachineOf } from '@/lib/commands/works/load-machine'
import { Refused } from '@/shared/refused'

/** Lets a machine push readings into its logs. The token itself is shown once and never stored. */
export const createMachineToken = defineCommand({
  name: 'create-machine-token',
  input: z.strictObject({
    machine: worksCode('The machine'),
    name: line('The token’s name', 60),
    tokenHash: sha256Hex,
  }),
  load: async (tx, { name }, { trailId }) => ({
    machine: await openMachineOf(tx, trailId),
    twin: await tx.machineToken.findFirst({ where: { trailId, name, revokedAt: null } }),
  }),
  decide({ machine, twin }, { name, tokenHash }, { newId }) {
    if (twin)
      throw new Refused(`${name} has a token already. Stop that one first.`, {
        name: 'This name has a token already.',
      })
    const token = { id: newId(), name, tokenHash }
    return {
      change: token,
      record: { machine: machine.code, token: token.id, name, tokenHash },
      result: { token: token.id },
    }
  },
  async apply(tx, token, { trailId, actor, now }) {
    await tx.machineToken.create({
      data: { ...token, trailId, createdById: actor.personId, createdAt: now },
    })
  },
})
