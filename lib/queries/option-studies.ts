import { database } from '@/lib/db/client'
import type { OptionAlternative, OptionStudy } from '@/shared/gate/option-study'

/** The option studies of a programme, or of one of its items, newest first: two statements. */
export async function readOptionStudies(programmeId: string, itemKey?: string): Promise<OptionStudy[]> {
  return studiesWhere({ programmeId, ...(itemKey !== undefined && { itemKey }) })
}

/** One study by its number; undefined when the programme has none of it. */
export async function readOptionStudy(programmeId: string, number: number): Promise<OptionStudy | undefined> {
  return (await studiesWhere({ programmeId, number }))[0]
}

async function studiesWhere(where: {
  programmeId: string
  itemKey?: string
  number?: number
}): Promise<OptionStudy[]> {
  const rows = await database().optionStudy.findMany({ where, orderBy: { number: 'desc' }, take: 200 })
  const people = await database().person.findMany({
    where: {
      id: { in: rows.flatMap(({ openedById, adoptedById }) => [openedById, adoptedById ?? openedById]) },
    },
    select: { id: true, name: true },
  })
  const nameOf = (id: string) => people.find((person) => person.id === id)?.name ?? 'somebody unknown'
  return rows.map(({ number, itemKey, title, alternatives, openedById, openedAt, ...row }) => ({
    number,
    itemKey,
    title,
    alternatives: (alternatives as unknown as StoredAlternative[]).map(alternativeOf),
    openedBy: nameOf(openedById),
    openedAt: openedAt.toISOString(),
    adoption:
      row.adopted && row.adoptedById && row.adoptedAt
        ? {
            name: row.adopted,
            why: row.adoptedWhy ?? '',
            by: nameOf(row.adoptedById),
            at: row.adoptedAt.toISOString(),
          }
        : null,
  }))
}

/** Studies opened before alternatives had these say nothing of them. */
type StoredAlternative = Omit<OptionAlternative, 'defectsPerMillion' | 'actions'> &
  Partial<Pick<OptionAlternative, 'defectsPerMillion' | 'actions'>>

const alternativeOf = (stored: StoredAlternative): OptionAlternative => ({
  ...stored,
  defectsPerMillion: stored.defectsPerMillion ?? null,
  actions: stored.actions ?? [],
})
