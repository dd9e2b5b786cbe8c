import type { Transaction } from '@/lib/db/transaction'

/** The tests of a lot that were not withdrawn, by method and day as their newest corrections say. */
export async function testsThatStand(
  tx: Transaction,
  lotId: string,
): Promise<readonly { readonly method: string; readonly testedOn: string }[]> {
  const tests = await tx.lotTest.findMany({
    where: { lotId, withdrawnAt: null },
    select: { id: true, method: true, testedOn: true },
  })
  const corrections = await tx.correction.findMany({
    where: { subjectId: { in: tests.map(({ id }) => id) } },
    orderBy: { number: 'desc' },
    distinct: ['subjectId'],
    select: { subjectId: true, values: true },
  })
  const corrected = new Map(corrections.map(({ subjectId, values }) => [subjectId, values as object]))
  return tests.map(({ id, method, testedOn }) => ({ method, testedOn, ...corrected.get(id) }))
}
