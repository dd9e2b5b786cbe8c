import { database } from '@/lib/db/client'
import { Prisma } from '@/lib/db/generated/client'
import { trailsOfLots } from '@/lib/programme/works/lot-trails'
import { namedParts } from '@/lib/programme/works/named-parts'

interface Dependence {
  readonly programmeId: string
  readonly mark: string
}

/**
 * What of the works each programme's facts rest on: the newest hashes of the trails of the machines that log on its
 * lines, of the suppliers of its lots, of the parts that its parts list names, and of everything else of the works that its
 * facts are read from, in one text. Something of the works that a
 * programme does not use leaves its text as it is. '' where it uses nothing.
 */
export async function worksMarks(programmeIds: readonly string[]): Promise<ReadonlyMap<string, string>> {
  if (programmeIds.length === 0) return new Map()
  return marksOf(Prisma.sql`SELECT unnest(${programmeIds}::uuid[])`)
}

/** The same for the programme of one code. */
export async function worksMarkOf(code: string): Promise<string> {
  const marks = await marksOf(Prisma.sql`SELECT "id" FROM "Programme" WHERE "code" = ${code}`)
  return [...marks.values()][0] ?? ''
}

async function marksOf(programmes: Prisma.Sql): Promise<ReadonlyMap<string, string>> {
  const rows = await database().$queryRaw<Dependence[]>`
    SELECT used."programmeId"::text AS "programmeId",
           string_agg(trail."headHash", ' ' ORDER BY trail."id") AS "mark"
    FROM (${usedOfTheWorks(programmes)}) AS used
    JOIN "Trail" AS trail ON trail."id" = used."trailId"::text
    GROUP BY used."programmeId"`
  return new Map(rows.map(({ programmeId, mark }) => [programmeId, mark]))
}

/** Pairs of a programme and a trail of the works that its facts are read from, each once. */
export function usedOfTheWorks(programmes: Prisma.Sql): Prisma.Sql {
  const asked = Prisma.sql`ANY(${programmes})`
  return Prisma.sql`
    SELECT stated."programmeId", machine."id" AS "trailId"
      FROM "ProgrammeLine" AS stated JOIN "Machine" AS machine ON machine."lineId" = stated."lineId"
      WHERE stated."programmeId" = ${asked}
    UNION
    SELECT log."trailId", log."machineId" FROM "Log" AS log
      WHERE log."machineId" IS NOT NULL AND log."trailId" = ${asked}
    UNION
    SELECT log."onlyForId", log."machineId" FROM "Log" AS log
      WHERE log."machineId" IS NOT NULL AND log."onlyForId" = ${asked}
    UNION
    SELECT programme."id", people."id" FROM "Programme" AS programme, "TrailSubject" AS people
      WHERE people."kind" = 'people' AND programme."id" = ${asked}
    UNION
    ${trailsOfLots(asked)}
    UNION
    SELECT named."programmeId", part."id" FROM (${namedParts(programmes)}) AS named
      JOIN "Part" AS part ON part."code" = named."part"`
}
