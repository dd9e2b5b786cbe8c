import { database } from '@/lib/db/client'
import { Prisma } from '@/lib/db/generated/client'
import { standInsOf } from '@/lib/programme/stand-ins'
import type { SignedIn } from '@/lib/auth/session'
import { dateAtWorks } from '@/lib/settings/works'

/** A condition on the programme `g` of a statement: that the person may read it. One statement. */
export async function readableProgrammes(
  { personId, auditor, administrator }: Pick<SignedIn, 'personId' | 'auditor' | 'administrator'>,
  now: Date,
): Promise<Prisma.Sql> {
  if (auditor) return Prisma.sql`true`
  // Whoever administers takes no part in programmes; where they are a member all the same, they read that one.
  const standIns = administrator ? new Map() : await standInsOf(database(), personId, dateAtWorks(now))
  return Prisma.sql`(g."leadId" = ${personId}::uuid
    OR g."id" = ANY(${[...standIns.keys()]}::uuid[])
    OR EXISTS (SELECT FROM "Membership" own
               WHERE own."programmeId" = g."id" AND own."personId" = ${personId}::uuid))`
}

/** Of those the person may read: the one of that code, else the newest opened; one statement. */
export async function newestReadable(
  readable: Prisma.Sql,
  code: string | undefined,
): Promise<string | undefined> {
  const [row] = await database().$queryRaw<{ id: string }[]>`
    SELECT g."id"::text AS "id" FROM "Programme" g WHERE ${readable}
    ORDER BY g."code" = ${code ?? ''} DESC, g."openedAt" DESC, g."id" DESC LIMIT 1`
  return row?.id
}
