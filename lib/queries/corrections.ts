import { database } from '@/lib/db/client'
import { groupedBy } from '@/shared/grouped-by'
import type { CorrectedValues, Correction } from '@/shared/records/correction'

/** The corrections of some subjects, oldest first, by the subject's id; one statement. */
export async function correctionsOf(
  subjectIds: readonly string[],
): Promise<ReadonlyMap<string, readonly Correction[]>> {
  const rows = await database().correction.findMany({
    where: { subjectId: { in: [...subjectIds] } },
    orderBy: [{ subjectId: 'asc' }, { number: 'asc' }],
  })
  return groupedBy(
    rows,
    ({ subjectId }) => subjectId,
    ({ number, before, values, reason, authorName, at }): Correction => ({
      number,
      before: before as CorrectedValues,
      after: values as CorrectedValues,
      reason,
      byName: authorName,
      at: at.toISOString(),
    }),
  )
}
