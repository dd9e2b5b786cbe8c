import { Prisma } from '@/lib/db/generated/client'

/**
 * Pairs of a programme and a trail that tells of its lots, or of others of the same suppliers: the suppliers' own, and
 * those of programmes that recorded such lots, or what a supplier did, before the works kept them. `asked` names the
 * programmes, as the right side of a comparison.
 */
export const trailsOfLots = (asked: Prisma.Sql): Prisma.Sql => Prisma.sql`(
  WITH own AS (
    SELECT lot."trailId" AS "programmeId", lot."id" AS "lotId" FROM "Lot" AS lot WHERE lot."trailId" = ${asked}
    UNION
    SELECT held."programmeId", held."lotId" FROM "LotAllocation" AS held WHERE held."programmeId" = ${asked}
  ), named AS (
    SELECT own."programmeId", name_key(lot."supplier") AS "key"
      FROM own JOIN "Lot" AS lot ON lot."id" = own."lotId"
    UNION
    SELECT own."programmeId", name_key(correction."values" ->> 'supplier')
      FROM own JOIN "Correction" AS correction ON correction."subjectId" = own."lotId" AND correction."of" = 'lot'
  ), told AS (
    SELECT named."programmeId", supplier."id" AS "trailId"
      FROM named JOIN "Supplier" AS supplier ON name_key(supplier."code") = named."key"
    UNION
    SELECT named."programmeId", lot."trailId"
      FROM named JOIN "Lot" AS lot ON name_key(lot."supplier") = named."key"
    UNION
    SELECT named."programmeId", correction."trailId"
      FROM named JOIN "Correction" AS correction
        ON correction."of" = 'lot' AND name_key(correction."values" ->> 'supplier') = named."key"
    UNION
    SELECT named."programmeId", record."trailId"
      FROM named JOIN "Record" AS record
        ON record."kind" = 'supplier-action' AND name_key(record."data" ->> 'supplier') = named."key"
    UNION
    SELECT named."programmeId", record."trailId"
      FROM "Record" AS record
      JOIN "Correction" AS correction ON correction."subjectId" = record."id"
      JOIN named ON name_key(correction."values" ->> 'supplier') = named."key"
      WHERE record."kind" = 'supplier-action'
  )
  SELECT "programmeId", "trailId" FROM told WHERE "trailId" <> "programmeId")`
