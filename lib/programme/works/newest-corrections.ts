import type { PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'

/** The values that the newest correction of each of these gives it, by id; one statement. */
export async function newestCorrections(
  db: Pick<PrismaClient | Transaction, 'correction'>,
  subjectIds: readonly string[],
): Promise<ReadonlyMap<string, object>> {
  const rows = await db.correction.findMany({
    where: { subjectId: { in: [...subjectIds] } },
    orderBy: [{ subjectId: 'asc' }, { number: 'desc' }],
    distinct: ['subjectId'],
    select: { subjectId: true, values: true },
  })
  return new Map(rows.map(({ subjectId, values }) => [subjectId, values as object]))
}
