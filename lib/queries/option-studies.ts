import { database } from '@/lib/db/client'
import { namesOf } from '@/lib/programme/names-of'
import { alternativeOf } from '@/shared/gate/option-alternative'
import { itemsOf, type OptionStudy } from '@/shared/gate/option-study'

/** The option studies of a programme, or those that touch one of its items, newest first: two statements. */
export async function readOptionStudies(programmeId: string, itemKey?: string): Promise<OptionStudy[]> {
  const studies = await studiesWhere({ programmeId })
  return itemKey === undefined ? studies : studies.filter((study) => itemsOf(study).includes(itemKey))
}

/** One study by its number; undefined when the programme has none of it. */
export async function readOptionStudy(programmeId: string, number: number): Promise<OptionStudy | undefined> {
  return (await studiesWhere({ programmeId, number }))[0]
}

async function studiesWhere(where: { programmeId: string; number?: number }): Promise<OptionStudy[]> {
  const rows = await database().optionStudy.findMany({ where, orderBy: { number: 'desc' }, take: 200 })
  const nameOf = await namesOf(
    database(),
    rows.flatMap(({ openedById, adoptedById }) => [openedById, adoptedById ?? openedById]),
  )
  return rows.map(({ number, itemKey, title, alternatives, openedById, openedAt, ...row }) => ({
    number,
    itemKey,
    title,
    alternatives: (alternatives as unknown as Parameters<typeof alternativeOf>[0][]).map(alternativeOf),
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
