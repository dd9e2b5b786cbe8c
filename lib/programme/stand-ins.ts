import type { PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import type { Absent, Actor } from '@/shared/actor'
import type { Department } from '@/shared/plan/department'

/** What a person may do in one programme for those who are away. */
export interface StandIn {
  readonly departments: readonly Department[]
  readonly standsInFor: readonly Absent[]
}

interface Row {
  readonly programmeId: string
  readonly department: string
  readonly personId: string
  readonly name: string
  readonly until: string
}

/**
 * The programmes in which a person stands in for somebody on a day, 'YYYY-MM-DD', by the programme's id; one statement.
 * Somebody stands in for a department that they belong to elsewhere, and only where they have no part of their own.
 */
export async function standInsOf(
  db: PrismaClient | Transaction,
  personId: string,
  today: string,
): Promise<ReadonlyMap<string, StandIn>> {
  const rows = await db.$queryRaw<Row[]>`
    SELECT m."programmeId"::text AS "programmeId", m."department", p."id"::text AS "personId", p."name",
           d."toOn" AS "until"
    FROM "Delegation" d
    JOIN "Person" p ON p."id" = d."personId" AND p."disabledAt" IS NULL
    JOIN "Membership" m ON m."personId" = d."personId"
    JOIN "Programme" g ON g."id" = m."programmeId" AND g."leadId" <> d."delegateId"
    WHERE d."delegateId" = ${personId}::uuid AND d."endedAt" IS NULL
      AND d."fromOn" <= ${today} AND d."toOn" >= ${today}
      AND EXISTS (SELECT FROM "Membership" own
                  WHERE own."personId" = d."delegateId" AND own."department" = m."department")
      AND NOT EXISTS (SELECT FROM "Membership" own
                      WHERE own."personId" = d."delegateId" AND own."programmeId" = m."programmeId")
    ORDER BY m."programmeId", p."name", m."department"`
  const found = new Map<string, StandIn>()
  for (const { programmeId, department, ...absent } of rows) {
    const { departments, standsInFor } = found.get(programmeId) ?? { departments: [], standsInFor: [] }
    found.set(programmeId, {
      departments: [...new Set([...departments, department as Department])],
      standsInFor: standsInFor.some((one) => one.personId === absent.personId)
        ? standsInFor
        : [...standsInFor, absent],
    })
  }
  return found
}

/** The person with the departments of those they stand in for; they sign as "Goran Ilić, for Ines Varga". */
export const standingIn = (own: Actor, standIn: StandIn | undefined): Actor =>
  standIn
    ? {
        ...own,
        ...standIn,
        name: `${own.name}, for ${standIn.standsInFor.map(({ name }) => name).join(' and ')}`,
      }
    : own
