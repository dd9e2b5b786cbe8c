import { database } from '@/lib/db/client'

/** A specified value that was changed after it had been given once. */
export interface LateRevision {
  readonly parameter: string
  readonly number: number
  readonly reason: string
  readonly at: string
  readonly author: string
}

const MAX_READ = 200

/** The changes of specified values in a programme, oldest first, at most 200; two statements. */
export async function lateRevisions(programmeId: string): Promise<LateRevision[]> {
  const rows = await database().revision.findMany({
    where: { programmeId, number: { gt: 1 } },
    orderBy: { at: 'asc' },
    take: MAX_READ,
    select: { parameter: true, number: true, reason: true, at: true, authorId: true },
  })
  const people = await database().person.findMany({
    where: { id: { in: [...new Set(rows.map(({ authorId }) => authorId))] } },
    select: { id: true, name: true },
  })
  return rows.map(({ parameter, number, reason, at, authorId }) => ({
    parameter,
    number,
    reason,
    at: at.toISOString(),
    author: people.find(({ id }) => id === authorId)?.name ?? 'somebody unknown',
  }))
}
