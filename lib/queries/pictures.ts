import { database } from '@/lib/db/client'
import { namesOf } from '@/lib/programme/names-of'
import type { Pictured } from '@/shared/reviews/pictured'

/** A picture of a joint or a nonconformity. */
export interface Picture {
  readonly id: string
  readonly about: Pictured
  readonly note: string
  readonly fileName: string
  readonly addedById: string
  readonly addedBy: string
  readonly at: string
}

/** The pictures of a programme that belong to no item, of one kind, oldest first; two statements. */
export async function readPictures(programmeId: string, kind: Pictured['kind']): Promise<Picture[]> {
  const rows = await database().evidence.findMany({
    where: {
      trailId: programmeId,
      itemKey: null,
      withdrawnAt: null,
      about: { path: ['kind'], equals: kind },
    },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
    take: 500,
  })
  const nameOf = await namesOf(
    database(),
    rows.map(({ addedById }) => addedById),
  )
  return rows.map(({ id, about, note, fileName, addedById, at }) => ({
    id,
    about: about as unknown as Pictured,
    note,
    fileName: fileName ?? '',
    addedById,
    addedBy: nameOf(addedById),
    at: at.toISOString(),
  }))
}
