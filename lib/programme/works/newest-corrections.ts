import type { Prisma, PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'

type Db = Pick<PrismaClient | Transaction, 'correction'>

/** The values that the newest correction of each of these gives it, by id; one statement. */
export const newestCorrections = (db: Db, subjectIds: readonly string[]) =>
  newestCorrectionsWhere(db, { subjectId: { in: [...subjectIds] } })

/** A row as it stands: with the values that its newest correction gives it. */
export const correctedBy =
  (corrections: ReadonlyMap<string, object>) =>
  <Row extends { readonly id: string }>(row: Row): Row => ({ ...row, ...corrections.get(row.id) })

/** The same of everything that such corrections are of. */
export async function newestCorrectionsWhere(
  db: Db,
  where: Prisma.CorrectionWhereInput,
): Promise<ReadonlyMap<string, object>> {
  const rows = await db.correction.findMany({
    where,
    orderBy: [{ subjectId: 'asc' }, { number: 'desc' }],
    distinct: ['subjectId'],
    select: { subjectId: true, values: true },
  })
  return new Map(rows.map(({ subjectId, values }) => [subjectId, values as object]))
}
