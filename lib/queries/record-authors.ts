import { database } from '@/lib/db/client'
import type { TrailKind } from '@/shared/works/works-kind'

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

/** Whose trail tells of a record; one statement. */
export async function recordedIn(id: string): Promise<{ trailId: string; kind: TrailKind; code: string }> {
  const { subject } = await database().record.findUniqueOrThrow({
    where: { id },
    select: { subject: { select: { id: true, kind: true, code: true } } },
  })
  return { trailId: subject.id, kind: subject.kind as TrailKind, code: subject.code }
}
