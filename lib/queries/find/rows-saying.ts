import { database } from '@/lib/db/client'
import { Prisma } from '@/lib/db/generated/client'
import type { SignedIn } from '@/lib/auth/session'
import { CAPITALS, SMALL_LETTERS } from '@/shared/find/folded'
import { DELIBERATED, LESSONS_OF_ALL } from '@/lib/queries/find/deliberated'
import type { FindGroup } from '@/shared/find/find-groups'
import type { Place } from '@/shared/place'
import { training } from '@/shared/records/kinds/training'

/** A row that holds every word looked for. */
export interface FoundRow {
  readonly group: FindGroup
  readonly label: string
  readonly also: readonly string[]
  readonly detail: string
  /** '' outside any programme. */
  readonly programme: string
  readonly place: Place
}

/** As many of a group as a page of matches shows. */
const MOST_A_GROUP = 40

/**
 * What holds every word in programmes that may be read, and at the works; so many of a group at the most, those that
 * begin with the first word before others. Of the programme left out only what is deliberated in it. One statement.
 */
export async function rowsSaying(
  words: readonly string[],
  { administrator }: Pick<SignedIn, 'administrator'>,
  readable: Prisma.Sql,
  leftOut: string | undefined,
): Promise<FoundRow[]> {
  const patterns = words.map((word) => `%${word.replace(/[\\%_]/g, '\\$&')}%`)
  return database().$queryRaw<FoundRow[]>`
  WITH readable AS (
    SELECT g."id", g."code", g."title" FROM "Programme" g WHERE ${readable}
  ), theirs AS (
    SELECT * FROM readable WHERE "id"::text <> ${leftOut ?? ''}
  ), source AS (
    ${Prisma.join([...OF_PROGRAMMES, ...DELIBERATED, ...OF_ALL, ...(administrator ? [PEOPLE] : [...OF_THE_WORKS, LESSONS_OF_ALL])], ' UNION ALL ')}
  ), said AS (
    SELECT source.*, ${foldedSql(Prisma.sql`concat_ws(' ', "label", array_to_string("also", ' '))`)} AS "own",
      ${foldedSql(Prisma.sql`"programme"`)} AS "of",
      ${foldedSql(Prisma.sql`"label"`)} AS "name"
    FROM source
  ), best AS (
    SELECT said.*, row_number() OVER (
      PARTITION BY "group" ORDER BY starts_with("name", ${words[0] ?? ''}) DESC, "name", "programme") AS "at"
    FROM said WHERE "own" LIKE ANY(${patterns}) AND concat_ws(' ', "own", "of") LIKE ALL(${patterns})
  )
  SELECT "group", "label", "also", "detail", "programme", "place" FROM best
  WHERE "at" <= ${MOST_A_GROUP} ORDER BY "group", "at"`
}

/**
 * A text as `folded` of shared/find compares it, in Latin, Greek and Cyrillic letters, whatever the locale of the
 * database: by the collation "C" `lower` knows the letters of ASCII alone. Plain texts, which are most, go the short way.
 */
export const foldedSql = (text: Prisma.Sql): Prisma.Sql =>
  Prisma.sql`CASE WHEN octet_length(${text}) = char_length(${text}) THEN lower(${text} COLLATE "C")
    ELSE replace(replace(replace(translate(
      translate(regexp_replace(normalize(${text}, NFKD), '[\u0300-\u036f\u0483-\u0489]+', '', 'g'),
        ${CAPITALS}, ${SMALL_LETTERS}),
      'øłđıς', 'oldiσ'), 'ß', 'ss'), 'æ', 'ae'), 'œ', 'oe') END`

/** What lies in programmes other than the one left out: its columns are those of a row, and so are those of all below. */
const OF_PROGRAMMES: readonly Prisma.Sql[] = [
  Prisma.sql`
    SELECT 'programme' AS "group", "code" AS "label", ARRAY["title"] AS "also", "title" AS "detail",
      "code" AS "programme", jsonb_build_object('kind', 'route card') AS "place" FROM theirs`,
  Prisma.sql`
    SELECT 'item', item."added" ->> 'title', ARRAY[item."key"], '', theirs."code",
      jsonb_build_object('kind', 'item', 'item', item."key")
    FROM "PlanItem" item JOIN theirs ON theirs."id" = item."programmeId" WHERE item."added" ->> 'title' IS NOT NULL`,
  Prisma.sql`
    SELECT 'action', 'Action ' || action."number" || ': ' || action."question", ARRAY[action."number"::text], '',
      theirs."code", jsonb_build_object('kind', 'action', 'number', action."number")
    FROM "Action" action JOIN theirs ON theirs."id" = action."programmeId"`,
  Prisma.sql`
    SELECT 'lot', lot."code", ARRAY[lot."part", lot."supplier", lot."dateCode"],
      concat_ws(', ', lot."kind", lot."part", lot."supplier"), theirs."code",
      jsonb_build_object('kind', 'lot', 'lot', lot."code")
    FROM "Lot" lot JOIN theirs ON theirs."id" = lot."trailId"`,
  Prisma.sql`
    SELECT 'log', log."code", ARRAY[log."characteristic", log."line", log."machine"], log."characteristic",
      theirs."code", jsonb_build_object('kind', 'log', 'log', log."code")
    FROM "Log" log JOIN theirs ON theirs."id" = log."trailId"`,
  Prisma.sql`
    SELECT 'evidence', coalesce(file."fileName", file."url", file."kind"), ARRAY[file."kind", file."note"],
      concat_ws(': ', file."kind", nullif(file."note", '')), theirs."code",
      CASE WHEN file."fileName" ILIKE '%.zip' THEN jsonb_build_object('kind', 'board', 'evidence', file."id"::text)
        ELSE jsonb_build_object('kind', 'item', 'item', file."itemKey", 'part', 'evidence') END
    FROM "Evidence" file JOIN theirs ON theirs."id" = file."trailId"
    WHERE file."withdrawnAt" IS NULL AND file."itemKey" IS NOT NULL`,
  Prisma.sql`
    SELECT DISTINCT 'person', person."name", ARRAY[]::text[], '', theirs."code",
      jsonb_build_object('kind', 'members')
    FROM "Membership" member JOIN theirs ON theirs."id" = member."programmeId"
    JOIN "Person" person ON person."id" = member."personId"`,
]

/** What everybody who is signed in may read. */
const OF_ALL: readonly Prisma.Sql[] = [
  Prisma.sql`
    SELECT 'part', part."code", ARRAY[newest."values" ->> 'description'],
      coalesce(newest."values" ->> 'description', ''), '', jsonb_build_object('kind', 'part', 'part', part."code")
    FROM "Part" part JOIN LATERAL (SELECT "values" FROM "PartRevision" WHERE "partId" = part."id"
                                   ORDER BY "number" DESC LIMIT 1) newest ON true`,
  Prisma.sql`
    SELECT DISTINCT 'person', record."data" ->> 'worker', ARRAY[]::text[], 'training', '',
      jsonb_build_object('kind', 'trained person', 'name', record."data" ->> 'worker')
    FROM "Record" record WHERE record."kind" = ${training.key} AND record."withdrawnAt" IS NULL`,
]

/** What the works keep, for everybody but an administrator. */
const OF_THE_WORKS: readonly Prisma.Sql[] = [
  Prisma.sql`
    SELECT 'lot', lot."code", ARRAY[lot."part", lot."supplier", lot."dateCode"],
      concat_ws(', ', lot."kind", lot."part", lot."supplier"), '',
      jsonb_build_object('kind', 'works lot', 'supplier', subject."code", 'lot', lot."code")
    FROM "Lot" lot JOIN "TrailSubject" subject ON subject."id" = lot."trailId" AND subject."kind" = 'supplier'`,
  Prisma.sql`
    SELECT 'log', log."code", ARRAY[log."characteristic", machine."code"],
      concat_ws(', ', log."characteristic", machine."code"), '',
      jsonb_build_object('kind', 'machine', 'machine', machine."code", 'log', log."code")
    FROM "Log" log JOIN "Machine" machine ON machine."id" = log."trailId"`,
  Prisma.sql`
    SELECT 'works', "code", ARRAY["name"], 'line: ' || "name", '',
      jsonb_build_object('kind', 'line', 'line', "code") FROM "Line"`,
  Prisma.sql`
    SELECT 'works', "code", ARRAY["kind"], 'machine: ' || "kind", '',
      jsonb_build_object('kind', 'machine', 'machine', "code") FROM "Machine"`,
  Prisma.sql`
    SELECT 'works', "code", ARRAY[]::text[], 'supplier', '',
      jsonb_build_object('kind', 'of the works', 'subject', jsonb_build_object('kind', 'supplier', 'code', "code"))
    FROM "Supplier"`,
]

/** Whom an administrator keeps. */
const PEOPLE = Prisma.sql`
  SELECT 'person', "name", ARRAY["email"], "email", '',
    jsonb_build_object('kind', 'person', 'personId', "id"::text) FROM "Person"`
