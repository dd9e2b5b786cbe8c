import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, reason, wholeNumber, worksCode } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

/** Pieces that a programme does not use go back into the store. */
export const returnAllocation = defineCommand({
  name: 'return-allocation',
  input: z.strictObject({
    supplier: worksCode('The supplier'),
    allocation: id,
    quantity: wholeNumber('The quantity', 1, 100_000_000),
    reason,
  }),
  load: (tx, { allocation }, { trailId }) =>
    tx.lotAllocation.findFirst({
      where: { id: allocation, trailId },
      select: {
        id: true,
        quantity: true,
        returned: true,
        lot: { select: { code: true, part: true } },
        programme: { select: { code: true } },
      },
    }),
  decide(allocation, { quantity, reason: why }, { subject }) {
    if (!allocation) throw new Refused('There is no such allocation of this supplier’s lots.')
    const { lot, programme } = allocation
    const held = allocation.quantity - allocation.returned
    if (quantity > held)
      throw new Refused(
        held === 0
          ? `All of it came back from ${programme.code} already.`
          : `Programme ${programme.code} holds ${held} of lot ${lot.code} by this allocation.`,
        { quantity: `At most ${held}.` },
      )
    const returned = allocation.returned + quantity
    return {
      change: { id: allocation.id, returned, why },
      record: {
        atSupplier: subject.code,
        allocation: allocation.id,
        lot: lot.code,
        part: lot.part,
        from: programme.code,
        quantity,
        returned,
        reason: why,
      },
      result: { supplier: subject.code, lot: lot.code },
    }
  },
  async apply(tx, { id: key, returned, why }, { actor, now }) {
    await tx.lotAllocation.update({
      where: { id: key },
      data: { returned, returnedById: actor.personId, returnedAt: now, returnedWhy: why },
    })
  },
})
