import type { PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { namesOf } from '@/lib/programme/names-of'
import type { ChangeNotice, Disposition } from '@/shared/gate/change-notice'
import type { ProposedChange } from '@/shared/gate/proposed-change'
import type { Department } from '@/shared/plan/department'

/** The change notices of a programme, or one of them, newest first: four statements. */
export async function loadChangeNotices(
  db: PrismaClient | Transaction,
  programmeId: string,
  number?: number,
): Promise<ChangeNotice[]> {
  const within = { programmeId, ...(number !== undefined && { notice: number }) }
  const notices = await db.changeNotice.findMany({
    where: { programmeId, ...(number !== undefined && { number }) },
    orderBy: { number: 'desc' },
    take: 200,
  })
  const inOrder = [{ at: 'asc' as const }, { id: 'asc' as const }]
  const changes = await db.noticeChange.findMany({
    where: { ...within, droppedAt: null },
    orderBy: inOrder,
  })
  const answers = await db.noticeAnswer.findMany({ where: within, orderBy: inOrder })
  const nameOf = await namesOf(db, [
    ...notices.flatMap(({ openedById, disposedById }) => [openedById, disposedById ?? openedById]),
    ...changes.map(({ authorId }) => authorId),
  ])
  return notices.map((row) => ({
    number: row.number,
    title: row.title,
    reason: row.reason,
    costPerBoard: row.costPerBoard,
    costOnce: row.costOnce,
    openedById: row.openedById,
    openedByName: nameOf(row.openedById),
    openedAt: row.openedAt.toISOString(),
    changes: changes
      .filter(({ notice }) => notice === row.number)
      .map(({ id, kind, content, reason, authorId, at }) => ({
        id,
        change: { kind, ...(content as object) } as ProposedChange,
        reason,
        authorId,
        authorName: nameOf(authorId),
        at: at.toISOString(),
      })),
    answers: answers
      .filter(({ notice }) => notice === row.number)
      .map(({ department, agrees, reason, digest, personId, personName, at }) => ({
        department: department as Department,
        agrees,
        reason,
        digest,
        personId,
        personName,
        at: at.toISOString(),
      })),
    disposition:
      row.disposition && row.disposedById && row.disposedAt
        ? {
            kind: row.disposition as Disposition,
            why: row.dispositionWhy ?? '',
            byName: nameOf(row.disposedById),
            at: row.disposedAt.toISOString(),
          }
        : null,
  }))
}
