import { database } from '@/lib/db/client'
import { loadChangeNotices } from '@/lib/programme/change-notices'
import { namesOf } from '@/lib/programme/names-of'
import { correctionsOf } from '@/lib/queries/corrections'
import { readOptionStudies } from '@/lib/queries/option-studies'
import { groupedBy } from '@/shared/grouped-by'
import type {
  BatchOrigin,
  Origins,
  RecordedBy,
  RequirementOrigin,
  RevisionOrigin,
} from '@/shared/why/origins'
import { recordedKey, type RecordedAs } from '@/shared/why/step'

/** What a chain asks of how facts came about: parameters and limits by key, recorded rows by id. */
export interface OriginsAsked {
  readonly parameters: readonly string[]
  readonly limits: readonly string[]
  readonly rows: readonly string[]
}

/** How some facts of a programme came about, in a bounded number of statements. */
export async function readOrigins(
  programmeId: string,
  { parameters, limits, rows }: OriginsAsked,
): Promise<Origins> {
  const db = database()
  const named = { id: { in: [...rows] } }
  const select = { id: true, addedById: true, at: true } as const
  const [revisions, requirements, lots, tests, logs, inspections, records, batches] = await Promise.all([
    db.revision.findMany({
      where: { programmeId, parameter: { in: [...parameters] } },
      orderBy: [{ parameter: 'asc' }, { number: 'desc' }],
    }),
    db.requirement.findMany({ where: { programmeId, limit: { in: [...limits] } } }),
    db.lot.findMany({ where: named, select }),
    db.lotTest.findMany({ where: named, select }),
    db.log.findMany({ where: named, select }),
    db.inspection.findMany({ where: { programmeId, ...named }, select }),
    db.record.findMany({ where: named, select }),
    db.readingBatch.findMany({
      where: { OR: [{ lotTestId: { in: [...rows] } }, { logId: { in: [...rows] } }] },
      orderBy: [{ at: 'asc' }, { id: 'asc' }],
      select: {
        id: true,
        lotTestId: true,
        logId: true,
        count: true,
        sha256: true,
        addedById: true,
        at: true,
      },
    }),
  ])
  const recorded = [...lots, ...tests, ...logs, ...inspections, ...records]
  const [nameOf, studies, notices, corrections] = await Promise.all([
    namesOf(db, [
      ...[...revisions, ...requirements].map(({ authorId }) => authorId),
      ...[...recorded, ...batches].map(({ addedById }) => addedById),
    ]),
    readOptionStudies(programmeId),
    loadChangeNotices(db, programmeId),
    correctionsOf(rows),
  ])
  return {
    revisions: groupedBy(
      revisions,
      ({ parameter }) => parameter,
      ({ number, value, reason, authorId, at, notice }): RevisionOrigin => ({
        number,
        value,
        reason,
        author: nameOf(authorId),
        at: at.toISOString(),
        notice,
      }),
    ),
    requirements: new Map(
      requirements.map(({ id, reason, authorId, at, notice, companyRule }): [string, RequirementOrigin] => [
        id,
        { id, reason, author: nameOf(authorId), at: at.toISOString(), notice, companyRule },
      ]),
    ),
    studies,
    notices,
    recorded: new Map(
      recorded.map(({ id, addedById, at }): [string, RecordedBy] => [
        id,
        { name: nameOf(addedById), at: at.toISOString() },
      ]),
    ),
    batches: groupedBy(
      batches,
      ({ lotTestId, logId }) => lotTestId ?? logId ?? '',
      ({ id, count, sha256, addedById, at }): BatchOrigin => ({
        id,
        count,
        sha256,
        by: nameOf(addedById),
        at: at.toISOString(),
      }),
    ),
    corrections,
  }
}

/** The entries of a trail that hold what is wanted, by what was wanted; one statement. */
export async function entriesHolding(
  trailId: string,
  wanted: readonly RecordedAs[],
): Promise<ReadonlyMap<string, readonly number[]>> {
  const distinct = [...new Map(wanted.map((one) => [recordedKey(one), one])).values()]
  const ats = distinct.map(({ at }) => at)
  const names = distinct.map(({ name }) => name)
  const rows = await database().$queryRaw<{ at: string; name: string; seq: number }[]>`
    SELECT w."at", w."name", e."seq"
    FROM unnest(${ats}::text[], ${names}::text[]) AS w("at", "name")
    JOIN "TrailEntry" e ON e."trailId" = ${trailId} AND e."at" = w."at"
      AND position('"' || w."name" || '"' IN e."payload") > 0
    ORDER BY e."seq"`
  return groupedBy(rows, recordedKey, ({ seq }) => seq)
}
