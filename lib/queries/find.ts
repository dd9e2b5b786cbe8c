import type { SignedIn } from '@/lib/auth/session'
import { programmesAtWork } from '@/lib/queries/works/programmes-at-work'
import { newestReadable, readableProgrammes } from '@/lib/queries/find/readable-programmes'
import { rowsSaying, type FoundRow } from '@/lib/queries/find/rows-saying'
import { wordsOf } from '@/shared/find/folded'
import type { Findable } from '@/shared/find/findable'
import { programmeFindables } from '@/shared/find/in-programme'
import type { Place } from '@/shared/place'

/** What may be found, and the programme whose plan it is of: the one asked in, or the newest the person may read. */
export interface Findables {
  readonly home: string | undefined
  readonly findables: readonly Findable<Place>[]
}

/**
 * What the database holds that could answer a query, for a person: the plan and the records of the programme they are in
 * (of the newest they may read, outside any), and what holds every word in the others, in what is deliberated in any of
 * them, and at the works. What they may not read
 * is not looked at. At most eight statements.
 */
export async function readFindables(
  person: Pick<SignedIn, 'personId' | 'auditor' | 'administrator'>,
  query: string,
  inProgramme: string | undefined,
  now = new Date(),
): Promise<Findables> {
  const words = wordsOf(query)
  if (words.length === 0) return { home: undefined, findables: [] }
  const readable = await readableProgrammes(person, now)
  const homeId = await newestReadable(readable, inProgramme)
  const [judged, rows] = await Promise.all([
    homeId === undefined ? undefined : programmesAtWork([homeId], now).then((found) => found.get(homeId)),
    rowsSaying(words, person, readable, homeId),
  ])
  return {
    home: judged?.state.programme.code,
    findables: [...(judged ? programmeFindables(judged.state) : []), ...rows.map(findableOf)],
  }
}

const findableOf = ({ group, label, also, detail, programme, place }: FoundRow): Findable<Place> => ({
  group,
  label,
  also,
  ...(detail ? { detail } : {}),
  ...(programme ? { programme } : {}),
  where: place,
})
