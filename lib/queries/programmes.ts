import { database } from '@/lib/db/client'
import type { SignedIn } from '@/lib/auth/session'
import type { Prisma } from '@/lib/db/generated/client'
import type { JudgedProgramme } from '@/lib/programme/judged'
import { programmesAtWork } from '@/lib/queries/works/programmes-at-work'
import { standInsOf } from '@/lib/programme/stand-ins'
import { dateAtWorks } from '@/lib/settings/works'

export const PROGRAMMES_A_PAGE = 20

export interface ProgrammesPage {
  readonly programmes: readonly JudgedProgramme[]
  readonly found: number
}

/** One page of the programmes a person may read, newest opened first: five statements, and more only for those that changed. */
export async function readProgrammes(
  person: SignedIn,
  text: string,
  page: number,
  now = new Date(),
): Promise<ProgrammesPage> {
  const own = person.auditor ? {} : await ownOf(person.personId, dateAtWorks(now))
  const contains = { contains: text, mode: 'insensitive' } as const
  const where = { AND: [own, text ? { OR: [{ code: contains }, { title: contains }] } : {}] }
  const [rows, found] = await Promise.all([
    database().programme.findMany({
      where,
      orderBy: [{ openedAt: 'desc' }, { code: 'asc' }],
      skip: (page - 1) * PROGRAMMES_A_PAGE,
      take: PROGRAMMES_A_PAGE,
      select: { id: true },
    }),
    database().programme.count({ where }),
  ])
  const programmes = await programmesAtWork(
    rows.map(({ id }) => id),
    now,
  )
  return { programmes: [...programmes.values()], found }
}

/** The programmes a person belongs to, and those in which they stand in for somebody. */
async function ownOf(personId: string, today: string): Promise<Prisma.ProgrammeWhereInput> {
  const standIns = await standInsOf(database(), personId, today)
  return { OR: [{ memberships: { some: { personId } } }, { id: { in: [...standIns.keys()] } }] }
}
