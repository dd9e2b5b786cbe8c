import { database } from '@/lib/db/client'

/** A standing in that is not over, as one of the two sees it. */
export interface DelegationRow {
  readonly id: string
  readonly personId: string
  readonly person: string
  readonly delegate: string
  readonly fromOn: string
  readonly toOn: string
}

/** What a person has chosen about their desk. */
export interface DeskSettings {
  /** Those away, and those who stand in; the person is one of the two. */
  readonly delegations: readonly DelegationRow[]
  /** Who shares a department with them and can stand in, by name. */
  readonly colleagues: readonly { readonly id: string; readonly name: string }[]
  readonly wantsDigest: boolean
  /** When the calendar's address was made; null when there is none. */
  readonly calendarSince: Date | null
}

/** Four statements. `today` is 'YYYY-MM-DD'. */
export async function readDeskSettings(personId: string, today: string): Promise<DeskSettings> {
  const [delegations, colleagues, wish, address] = await Promise.all([
    database().$queryRaw<DelegationRow[]>`
      SELECT d."id"::text, d."personId"::text, p."name" AS "person", q."name" AS "delegate", d."fromOn", d."toOn"
      FROM "Delegation" d JOIN "Person" p ON p."id" = d."personId" JOIN "Person" q ON q."id" = d."delegateId"
      WHERE (d."personId" = ${personId}::uuid OR d."delegateId" = ${personId}::uuid)
        AND d."endedAt" IS NULL AND d."toOn" >= ${today}
      ORDER BY d."fromOn", d."id"`,
    database().$queryRaw<{ id: string; name: string }[]>`
      SELECT DISTINCT p."id"::text, p."name" FROM "Membership" own
      JOIN "Membership" other ON other."department" = own."department" AND other."personId" <> own."personId"
      JOIN "Person" p ON p."id" = other."personId" AND p."disabledAt" IS NULL
      WHERE own."personId" = ${personId}::uuid ORDER BY p."name"`,
    database().digestWish.findUnique({ where: { personId } }),
    database().calendarAddress.findFirst({ where: { personId, revokedAt: null } }),
  ])
  return {
    delegations,
    colleagues,
    wantsDigest: wish?.wanted ?? false,
    calendarSince: address?.createdAt ?? null,
  }
}
