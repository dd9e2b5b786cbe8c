import { z } from 'zod'
import type { Place } from '@/shared/place'
import type { RecordKind } from '@/shared/records/record-kind'
import { WORKS_KINDS, worksSubjectName, type TrailKind } from '@/shared/works/works-kind'

/** What of the works an entry about a record is of; entries about a programme's own records have none. */
export const recordedWorks = z.object({ kind: z.enum(WORKS_KINDS), code: z.string() }).optional()
type RecordedWorks = z.output<typeof recordedWorks>

/** " of machine Wave 1", where the record is the works'. */
export const ofWorks = (works: RecordedWorks): string =>
  works ? `, ${worksSubjectName(works).toLowerCase()}` : ''

/** Where a record of the works is shown; else where the programme shows it. */
export const recordPlace = (works: RecordedWorks, inProgramme: Place): Place =>
  works ? { kind: 'of the works', subject: works } : inProgramme

/** Why a record of this kind is not kept there; undefined where it is. */
export function keptElsewhere(
  { plural, keptAt }: Pick<RecordKind, 'plural' | 'keptAt'>,
  at: TrailKind,
): string | undefined {
  if ((keptAt ?? 'programme') === at) return undefined
  if (keptAt === undefined) return `${plural} are kept by each programme. Record it there.`
  return `${plural} are kept once for all programmes, ${PLACES[keptAt]}. Record it there.`
}

const PLACES: Readonly<Record<NonNullable<RecordKind['keptAt']>, string>> = {
  line: 'at the line of the works',
  machine: 'at the machine',
  supplier: 'at the supplier',
  part: 'at the part',
  people: 'with the people of the works',
  'company-rules': 'with the company rules',
}
