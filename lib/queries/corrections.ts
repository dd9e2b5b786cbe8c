import { database } from '@/lib/db/client'
import type { CorrectedValues, Correction } from '@/shared/records/correction'

/** The corrections of some subjects of a programme, oldest first, by the subject's id; one statement. */
export async function correctionsOf(
  programmeId: string,
  subjectIds: readonly string[],
): Promise<ReadonlyMap<string, readonly Correction[]>> {
  const rows = await database().correction.findMany({
    where: { programmeId, subjectId: { in: [...subjectIds] } },
    orderBy: [{ subjectId: 'asc' }, { number: 'asc' }],
  })
  const bySubject = new Map<string, Correction[]>()
  for (const { subjectId, number, before, values, reason, authorName, at } of rows) {
    const own = bySubject.get(subjectId) ?? []
    own.push({
      number,
      before: before as CorrectedValues,
      after: values as CorrectedValues,
      reason,
      byName: authorName,
      at: at.toISOString(),
    })
    bySubject.set(subjectId, own)
  }
  return bySubject
}
