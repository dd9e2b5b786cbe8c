import type { SignedIn } from '@/lib/auth/session'
import { database } from '@/lib/db/client'
import { programmesAtWork } from '@/lib/queries/works/programmes-at-work'
import { dateAtWorks } from '@/lib/settings/works'
import { programmeInBrief, type ProgrammeInBrief } from '@/shared/gate/programme-in-brief'

/** As many stand side by side; the newest opened. */
export const MOST_COMPARED = 200

/** Every programme that a person may read, in a row each, by code; a bounded number of statements, and more only for those that changed. */
export async function readProgrammesCompared(
  { personId, auditor }: Pick<SignedIn, 'personId' | 'auditor'>,
  now = new Date(),
): Promise<ProgrammeInBrief[]> {
  const programmes = await database().programme.findMany({
    where: auditor ? {} : { memberships: { some: { personId } } },
    orderBy: { openedAt: 'desc' },
    take: MOST_COMPARED,
    select: { id: true, openedAt: true },
  })
  const judged = await programmesAtWork(
    programmes.map(({ id }) => id),
    now,
  )
  return programmes
    .flatMap(({ id, openedAt }) => {
      const one = judged.get(id)
      return one ? [programmeInBrief(one.state, one.judgement, dateAtWorks(openedAt))] : []
    })
    .sort((one, other) => one.code.localeCompare(other.code))
}
