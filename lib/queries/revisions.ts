import { database } from '@/lib/db/client'

/** All revisions of one parameter, newest first, with their authors' names: two statements. */
export async function readRevisions(programmeId: string, parameter: string) {
  const revisions = await database().revision.findMany({
    where: { programmeId, parameter },
    orderBy: { number: 'desc' },
    take: 200,
  })
  const people = await database().person.findMany({
    where: { id: { in: revisions.map(({ authorId }) => authorId) } },
    select: { id: true, name: true },
  })
  return revisions.map(({ number, value, reason, at, authorId, notice }) => ({
    number,
    value: value as unknown,
    reason,
    at: at.toISOString(),
    notice,
    author: people.find(({ id }) => id === authorId)?.name ?? 'somebody unknown',
  }))
}

export type Revision = Awaited<ReturnType<typeof readRevisions>>[number]
