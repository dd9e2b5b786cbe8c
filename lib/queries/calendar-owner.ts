import { database } from '@/lib/db/client'
import type { DeskOwner } from '@/lib/queries/desk'

/** Whose calendar an address is, by the hash of its token; undefined when it is unknown or stopped, or they cannot sign in. */
export async function calendarOwner(tokenHash: string): Promise<DeskOwner | undefined> {
  const [owner] = await database().$queryRaw<DeskOwner[]>`
    SELECT p."id"::text AS "personId", p."name", p."auditor", p."administrator"
    FROM "CalendarAddress" a JOIN "Person" p ON p."id" = a."personId"
    WHERE a."tokenHash" = ${tokenHash} AND a."revokedAt" IS NULL AND p."disabledAt" IS NULL`
  return owner
}
