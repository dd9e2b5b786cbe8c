import { createHash } from 'node:crypto'
import { database } from '@/lib/db/client'
import { Prisma } from '@/lib/db/generated/client'
import { standInsOf } from '@/lib/programme/stand-ins'
import { usedOfTheWorks } from '@/lib/programme/works/works-mark'
import { dateAtWorks } from '@/lib/settings/works'

/** What an open page that shows more than one programme hears of. */
export interface WatchedTrails {
  readonly has: (trailId: string) => boolean
  /** How far all of them are, in one text: it is another as soon as one has a new entry. */
  readonly mark: string
}

interface Head {
  readonly trailId: string
  /** Null before its first entry. */
  readonly headHash: string | null
}

/**
 * The trails behind somebody's desk: those of the programmes they belong to or stand in for somebody in, and of the works
 * that these rest on.
 */
export async function trailsOfDesk(personId: string, now = new Date()): Promise<WatchedTrails> {
  const standIns = await standInsOf(database(), personId, dateAtWorks(now))
  const theirs = Prisma.sql`
    SELECT "programmeId" FROM "Membership" WHERE "personId" = ${personId}::uuid
    UNION SELECT unnest(${[...standIns.keys()]}::uuid[])`
  const heads = await database().$queryRaw<Head[]>`
    WITH watched AS (
      ${theirs} UNION SELECT used."trailId" FROM (${usedOfTheWorks(theirs)}) AS used
    )
    SELECT watched."programmeId"::text AS "trailId", trail."headHash"
    FROM watched LEFT JOIN "Trail" AS trail ON watched."programmeId"::text = trail."id" ORDER BY 1`
  const ids = new Set(heads.map(({ trailId }) => trailId))
  return { has: (trailId) => ids.has(trailId), mark: markOf(heads) }
}

/** The trails behind the home of the works: every one, for a window that a programme changes moves what is shown there. */
export async function trailsOfTheWorks(): Promise<WatchedTrails> {
  const heads = await database().$queryRaw<Head[]>`
    SELECT "id" AS "trailId", "headHash" FROM "Trail" ORDER BY "id"`
  return { has: () => true, mark: markOf(heads) }
}

const markOf = (heads: readonly Head[]): string =>
  createHash('sha256')
    .update(heads.map(({ headHash }) => headHash).join(' '))
    .digest('hex')
