import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { reason, worksCode } from '@/lib/commands/inputs'
import { openSupplier } from '@/lib/commands/suppliers/open-supplier'

/** Nothing more is received from it; its lots in the store stay to be used. */
export const closeSupplier = defineCommand({
  name: 'close-supplier',
  input: z.strictObject({ supplier: worksCode('The supplier'), reason }),
  load: (tx, _input, { trailId }) => openSupplier(tx, trailId),
  decide: ({ code }, { reason: why }) => ({
    change: { why },
    record: { supplier: code, reason: why },
    result: { supplier: code },
  }),
  async apply(tx, { why }, { trailId, actor, now }) {
    await tx.supplier.update({
      where: { id: trailId },
      data: { closedById: actor.personId, closedAt: now, closedWhy: why },
    })
  },
})
