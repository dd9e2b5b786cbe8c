import { database } from '@/lib/db/client'
import type { SignedIn } from '@/lib/auth/session'

/** The whole register, what is due first. */
export const readInstruments = () =>
  database().instrument.findMany({ orderBy: [{ outOfUse: 'asc' }, { dueOn: 'asc' }, { tag: 'asc' }] })

/** That readings of a programme rest on an instrument, and whether it was studied there. */
export interface InstrumentInProgramme {
  readonly instrumentId: string
  readonly programme: string
  readonly studied: boolean
}

/** In which programmes that the person may read each instrument tested a lot or was studied: one statement. */
export const readInstrumentUse = ({ personId, auditor }: SignedIn) =>
  database().$queryRaw<InstrumentInProgramme[]>`
    WITH readable AS (
      SELECT "id", "code" FROM "Programme"
      WHERE ${auditor} OR "id" IN (SELECT "programmeId" FROM "Membership" WHERE "personId" = ${personId}::uuid)
    ), uses AS (
      SELECT readable."code", "LotTest"."instrumentId", false AS studied
      FROM readable
      JOIN "LotTest" ON "LotTest"."trailId" = readable."id" OR "LotTest"."lotId" IN (
        SELECT "lotId" FROM "LotAllocation" WHERE "programmeId" = readable."id")
      WHERE "LotTest"."instrumentId" IS NOT NULL AND "LotTest"."withdrawnAt" IS NULL
      UNION ALL
      SELECT readable."code", "Instrument"."id", true
      FROM readable
      JOIN "Record" ON "Record"."trailId" = readable."id" AND "Record"."kind" = 'gauge-reading'
      JOIN "Instrument" ON "Instrument"."tag" = "Record"."data" ->> 'instrumentTag'
      WHERE "Record"."withdrawnAt" IS NULL
    )
    SELECT "instrumentId", "code" AS "programme", bool_or(studied) AS "studied"
    FROM uses GROUP BY "instrumentId", "code" ORDER BY "code"`
