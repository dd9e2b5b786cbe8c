import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, reason } from '@/lib/commands/inputs'
import { atSupplier, lotRecordedIn } from '@/lib/commands/lots/recorded-at'
import { Refused } from '@/shared/refused'

/** A test that should not count, and why. Its readings stay in the database. */
export const withdrawLotTest = defineCommand({
  name: 'withdraw-lot-test',
  input: z.strictObject({ ...lotRecordedIn, test: id, reason }),
  load: (tx, { test }, { trailId }) =>
    tx.lotTest.findFirst({
      where: { id: test, trailId, withdrawnAt: null },
      select: { id: true, method: true, testedOn: true, lot: { select: { code: true } } },
    }),
  decide(test, { reason: why }, context) {
    if (!test) throw new Refused('This test does not count any more.')
    return {
      change: { id: test.id, why },
      record: {
        ...atSupplier(context),
        test: test.id,
        lot: test.lot.code,
        method: test.method,
        testedOn: test.testedOn,
        reason: why,
      },
    }
  },
  async apply(tx, { id: key, why }, { now }) {
    await tx.lotTest.update({ where: { id: key }, data: { withdrawnAt: now, withdrawnWhy: why } })
  },
})
