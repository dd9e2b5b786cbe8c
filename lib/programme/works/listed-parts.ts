import { database } from '@/lib/db/client'
import { Prisma, type PrismaClient } from '@/lib/db/generated/client'
import { namedParts } from '@/lib/programme/works/named-parts'
import type { Transaction } from '@/lib/db/transaction'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { partsList } from '@/shared/plan/parameters/parts-list'
import { partsNamedIn, type ListedPart } from '@/shared/works/listed-part'
import type { PartValues } from '@/shared/works/part-columns'
import { partDigest } from '@/shared/works/part-content'

type Db = PrismaClient | Transaction

/** The parts that a programme names, today or in what is proposed, by their number; those that the works have described. */
export const loadListedParts = (db: Db, programmeId: string): Promise<ListedPart[]> =>
  partsAmong(
    db,
    Prisma.sql`SELECT "part" FROM (${namedParts(Prisma.sql`ARRAY[${programmeId}::uuid]`)}) AS named`,
  )

/** A programme as it would be judged with this value of a parameter: with the parts that another parts list names. */
export async function withPartsNamed(
  state: ProgrammeState,
  parameter: string,
  value: unknown,
): Promise<ProgrammeState> {
  if (parameter !== partsList.key) return state
  const { facts } = state
  const known = new Set(facts.records.parts.map(({ code }) => code))
  const missing = partsNamedIn(value).filter((code) => !known.has(code))
  if (missing.length === 0) return state
  const others = await partsAmong(database(), Prisma.sql`SELECT unnest(${missing}::text[])`)
  const records = { ...facts.records, parts: [...facts.records.parts, ...others] }
  return { ...state, facts: { ...facts, records } }
}

interface PartRow {
  code: string
  withdrawn: boolean
  revision: number
  values: PartValues
  digests: string[]
}

/** The parts whose number a query yields, with their newest values and whether those are approved: one statement. */
async function partsAmong(db: Db, codes: Prisma.Sql): Promise<ListedPart[]> {
  const rows = await db.$queryRaw<PartRow[]>`
    SELECT part."code", part."withdrawnAt" IS NOT NULL AS "withdrawn",
      newest."number" AS "revision", newest."values",
      ARRAY(SELECT "digest" FROM "PartApproval" WHERE "partId" = part."id") AS "digests"
    FROM "Part" AS part
    JOIN LATERAL (SELECT "number", "values" FROM "PartRevision" WHERE "partId" = part."id"
                  ORDER BY "number" DESC LIMIT 1) AS newest ON true
    WHERE part."code" IN (${codes})
    ORDER BY part."code"`
  return rows.map(({ code, withdrawn, revision, values, digests }) => {
    const digest = partDigest(code, values)
    return { code, revision, digest, approved: digests.includes(digest), withdrawn, values }
  })
}
