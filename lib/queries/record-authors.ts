import { database } from '@/lib/db/client'

export interface RecordAuthor {
  readonly name: string
  /** RFC 3339 */
  readonly at: string
}

/** Who recorded each record of some kinds, by the record's id; two statements. */
export async function recordAuthors(
  programmeId: string,
  kinds: readonly string[],
): Promise<ReadonlyMap<string, RecordAuthor>> {
  const rows = await database().record.findMany({
    where: { trailId: programmeId, kind: { in: [...kinds] }, withdrawnAt: null },
    select: { id: true, addedById: true, at: true },
  })
  const people = await database().person.findMany({
    where: { id: { in: [...new Set(rows.map(({ addedById }) => addedById))] } },
    select: { id: true, name: true },
  })
  const nameOf = new Map(people.map(({ id, name }) => [id, name]))
  return new Map(
    rows.map(({ id, addedById, at }) => [
      id,
      { name: nameOf.get(addedById) ?? 'somebody unknown', at: at.toISOString() },
    ]),
  )
}

/** Whether a record was made in this programme, or wherever else the trail is of; one statement. */
export const isRecordedIn = async (trailId: string, id: string): Promise<boolean> =>
  (await database().record.count({ where: { id, trailId } })) > 0
