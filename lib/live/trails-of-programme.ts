import { database } from '@/lib/db/client'
import { Prisma } from '@/lib/db/generated/client'
import { usedOfTheWorks } from '@/lib/programme/works/works-mark'

/** The trails whose entries can change what a programme's pages show: its own, and those of the works it rests on. */
export async function trailsOfProgramme(programmeId: string): Promise<ReadonlySet<string>> {
  const rows = await database().$queryRaw<{ trailId: string }[]>`
    SELECT DISTINCT "trailId"::text AS "trailId"
    FROM (${usedOfTheWorks(Prisma.sql`ARRAY[${programmeId}::uuid]`)}) AS used`
  return new Set([programmeId, ...rows.map(({ trailId }) => trailId)])
}
