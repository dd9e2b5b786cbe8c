import { database } from '@/lib/db/client'
import { loadNonconformities } from '@/lib/programme/load-nonconformities'
import type { Nonconformity } from '@/shared/nonconformities/nonconformity'

/** The nonconformities of a programme, newest first; three statements. */
export const readNonconformities = (programmeId: string): Promise<Nonconformity[]> =>
  loadNonconformities(database(), { programmeId })

/** One nonconformity by its number; undefined when the programme has none of it. */
export const readNonconformity = async (
  programmeId: string,
  number: number,
): Promise<Nonconformity | undefined> => (await loadNonconformities(database(), { programmeId, number }))[0]

/** Nonconformities opened from one subject, newest first; one statement. */
export const nonconformitiesFrom = (
  programmeId: string,
  source: { readonly kind: string; readonly key: string },
): Promise<{ number: number; title: string }[]> =>
  database().nonconformity.findMany({
    where: { programmeId, source: { equals: { kind: source.kind, key: source.key } } },
    orderBy: { number: 'desc' },
    take: 20,
    select: { number: true, title: true },
  })
