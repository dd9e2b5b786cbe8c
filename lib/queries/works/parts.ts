import { database } from '@/lib/db/client'
import { namesOf } from '@/lib/programme/names-of'
import type { PartValues } from '@/shared/works/part-columns'
import { partDigest } from '@/shared/works/part-content'

export const PARTS_A_PAGE = 50

/** A part as a list shows it. */
export interface PartInList {
  readonly code: string
  readonly revision: number
  readonly values: PartValues
  readonly standing: PartStanding
  readonly listedIn: number
}
export type PartStanding = 'approved' | 'not approved' | 'withdrawn'

interface PartRow {
  code: string
  withdrawnAt: Date | null
  number: number
  values: PartValues
  digests: string[]
  listedIn: number
  found: number
}

/** One page of the parts whose number or description holds a text, by number: one statement. */
export async function readParts(
  text: string,
  page: number,
): Promise<{ readonly parts: readonly PartInList[]; readonly found: number }> {
  const looked = `%${text.replace(/[\\%_]/g, '\\$&')}%`
  const rows = await database().$queryRaw<PartRow[]>`
    SELECT part."code", part."withdrawnAt", newest."number", newest."values",
      ARRAY(SELECT "digest" FROM "PartApproval" WHERE "partId" = part."id") AS "digests",
      (SELECT count(*)::int FROM (
        SELECT DISTINCT ON ("programmeId") "value" FROM "Revision" WHERE "parameter" = 'parts-list'
        ORDER BY "programmeId", "number" DESC) AS list
       WHERE list."value" @> jsonb_build_array(jsonb_build_object('part', part."code"))) AS "listedIn",
      count(*) OVER ()::int AS "found"
    FROM "Part" AS part
    JOIN LATERAL (SELECT "number", "values" FROM "PartRevision" WHERE "partId" = part."id"
                  ORDER BY "number" DESC LIMIT 1) AS newest ON true
    WHERE part."code" ILIKE ${looked} OR newest."values"->>'description' ILIKE ${looked}
    ORDER BY part."withdrawnAt" IS NOT NULL, part."code"
    LIMIT ${PARTS_A_PAGE} OFFSET ${(page - 1) * PARTS_A_PAGE}`
  return {
    parts: rows.map(({ code, withdrawnAt, number, values, digests, listedIn }) => ({
      code,
      revision: number,
      values,
      standing: standingOf(withdrawnAt, digests.includes(partDigest(code, values))),
      listedIn,
    })),
    found: rows[0]?.found ?? 0,
  }
}

const standingOf = (withdrawnAt: Date | null, isApproved: boolean): PartStanding =>
  withdrawnAt ? 'withdrawn' : isApproved ? 'approved' : 'not approved'

export type PartRead = NonNullable<Awaited<ReturnType<typeof readPart>>>

/** A part with all its revisions, newest first, its approvals and its drawings; undefined when there is none of that number. */
export async function readPart(code: string) {
  const part = await database().part.findUnique({
    // The database refuses to look for U+0000, which no number holds.
    where: { code: code.replaceAll('\0', '') },
    include: {
      revisions: { orderBy: { number: 'desc' } },
      approvals: { orderBy: [{ at: 'desc' }, { id: 'desc' }] },
    },
  })
  const newest = part?.revisions[0]
  if (!part || !newest) return undefined
  const drawings = await database().evidence.findMany({
    where: { trailId: part.id, withdrawnAt: null },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
    select: { id: true, fileName: true, note: true, sha256: true, addedById: true, at: true },
  })
  const nameOf = await namesOf(database(), [
    ...part.revisions.map(({ authorId }) => authorId),
    ...drawings.map(({ addedById }) => addedById),
    ...(part.withdrawnById ? [part.withdrawnById] : []),
  ])
  const digest = partDigest(code, newest.values as object)
  const approval = part.approvals.find((one) => one.digest === digest)
  return {
    id: part.id,
    code,
    digest,
    values: newest.values as unknown as PartValues,
    standing: standingOf(part.withdrawnAt, approval !== undefined),
    approval,
    authorId: newest.authorId,
    revisions: part.revisions.map(({ number, values, reason, authorId, at }) => ({
      number,
      values: values as unknown as PartValues,
      reason,
      author: nameOf(authorId),
      at: at.toISOString(),
    })),
    drawings: drawings.map(({ addedById, at, ...drawing }) => ({
      ...drawing,
      addedBy: nameOf(addedById),
      at: at.toISOString(),
    })),
    withdrawn: part.withdrawnAt && {
      at: part.withdrawnAt.toISOString(),
      by: nameOf(part.withdrawnById ?? ''),
      why: part.withdrawnWhy ?? '',
    },
  }
}

/** The programmes whose parts list names the part today, by their code. */
export async function readListingProgrammes(code: string): Promise<{ code: string; title: string }[]> {
  const part = code.replaceAll('\0', '')
  return database().$queryRaw`
    SELECT programme."code", programme."title" FROM "Programme" AS programme
    JOIN LATERAL (SELECT "value" FROM "Revision"
                  WHERE "programmeId" = programme."id" AND "parameter" = 'parts-list'
                  ORDER BY "number" DESC LIMIT 1) AS list ON true
    WHERE list."value" @> jsonb_build_array(jsonb_build_object('part', ${part}::text))
    ORDER BY programme."code"`
}
