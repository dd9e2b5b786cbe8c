import type { SignedIn } from '@/lib/auth/session'
import { database } from '@/lib/db/client'
import { Prisma } from '@/lib/db/generated/client'
import type { JudgedProgramme } from '@/lib/programme/judged'
import { usedOfTheWorks } from '@/lib/programme/works/works-mark'
import { programmesAtWork } from '@/lib/queries/works/programmes-at-work'

/** As many are judged at once; the newest opened. */
const MOST_JUDGED = 200

/** Programmes as they stand, by code, and how many more there are. */
export interface ProgrammesConcerned {
  readonly judged: readonly JudgedProgramme[]
  readonly more: number
}

/** The programmes whose facts are read from a trail, their own or one of the works: three statements, and more only for those that changed. */
export async function programmesRestingOn(trailId: string): Promise<ProgrammesConcerned> {
  const all = Prisma.sql`SELECT "id" FROM "Programme"`
  return judgedOf(Prisma.sql`
    SELECT used."programmeId" FROM (${usedOfTheWorks(all)}) AS used WHERE used."trailId" = ${trailId}::uuid
    UNION SELECT ${trailId}::uuid`)
}

/** The programmes that a person belongs to or leads; of an auditor all. */
export const programmesOf = ({
  personId,
  auditor,
}: Pick<SignedIn, 'personId' | 'auditor'>): Promise<ProgrammesConcerned> =>
  judgedOf(
    auditor
      ? Prisma.sql`SELECT "id" FROM "Programme"`
      : Prisma.sql`
          SELECT "id" FROM "Programme" WHERE "leadId" = ${personId}::uuid
          UNION SELECT "programmeId" FROM "Membership" WHERE "personId" = ${personId}::uuid`,
  )

async function judgedOf(ids: Prisma.Sql): Promise<ProgrammesConcerned> {
  const rows = await database().$queryRaw<{ id: string; found: number }[]>`
    SELECT "id"::text AS "id", count(*) OVER ()::int AS "found" FROM "Programme" WHERE "id" IN (${ids})
    ORDER BY "openedAt" DESC LIMIT ${MOST_JUDGED}`
  const judged = [...(await programmesAtWork(rows.map(({ id }) => id))).values()]
  return {
    judged: judged.sort((one, other) => one.state.programme.code.localeCompare(other.state.programme.code)),
    more: (rows[0]?.found ?? 0) - rows.length,
  }
}
