import { Prisma } from '@/lib/db/generated/client'

/**
 * What people put before each other in the programmes of `readable`, each under its number: concessions and deviation
 * permits, nonconformities, change notices, option studies, design reviews, lessons. Columns as in `rowsSaying`.
 */
export const DELIBERATED: readonly Prisma.Sql[] = [
  Prisma.sql`
    SELECT 'concession', CASE WHEN concession."permit" IS NULL THEN 'Concession ' ELSE 'Deviation permit ' END
        || concession."number" || ': ' || concession."why",
      ARRAY[concession."number"::text, 'concession'], '', readable."code",
      jsonb_build_object('kind', 'concession', 'number', concession."number")
    FROM "Concession" concession JOIN readable ON readable."id" = concession."programmeId"`,
  Prisma.sql`
    SELECT 'nonconformity', 'Nonconformity ' || found."number" || ': ' || found."title",
      ARRAY[found."number"::text, found."found"], found."foundOn", readable."code",
      jsonb_build_object('kind', 'nonconformity', 'number', found."number")
    FROM "Nonconformity" found JOIN readable ON readable."id" = found."programmeId"`,
  Prisma.sql`
    SELECT 'notice', 'Change notice ' || notice."number" || ': ' || notice."title",
      ARRAY[notice."number"::text, notice."reason"], coalesce(notice."disposition", 'open'), readable."code",
      jsonb_build_object('kind', 'notice', 'number', notice."number")
    FROM "ChangeNotice" notice JOIN readable ON readable."id" = notice."programmeId"`,
  Prisma.sql`
    SELECT 'study', 'Option study ' || study."number" || ': ' || study."title",
      array_prepend(study."number"::text, ARRAY(
        SELECT alternative ->> 'name' FROM jsonb_array_elements(study."alternatives") AS alternative)),
      CASE WHEN study."adopted" IS NULL THEN 'open' ELSE 'adopted: ' || study."adopted" END, readable."code",
      jsonb_build_object('kind', 'study', 'number', study."number")
    FROM "OptionStudy" study JOIN readable ON readable."id" = study."programmeId"`,
  Prisma.sql`
    SELECT 'review', 'Design review ' || review."number" || ': ' || review."title",
      ARRAY[review."number"::text, review."heldOn"], review."heldOn", readable."code",
      jsonb_build_object('kind', 'review', 'number', review."number")
    FROM "Review" review JOIN readable ON readable."id" = review."programmeId"`,
  Prisma.sql`
    SELECT 'lesson', 'Lesson ' || lesson."number" || ': ' || lesson."title",
      ARRAY[lesson."number"::text, lesson."learnt"],
      CASE WHEN lesson."retiredAt" IS NULL THEN coalesce(lesson."decision", 'proposed') ELSE 'retired' END,
      readable."code", jsonb_build_object('kind', 'lesson', 'number', lesson."number")
    FROM "Lesson" lesson JOIN readable ON readable."id" = lesson."programmeId"`,
]

/** Accepted lessons of programmes that may not be read: they come into every programme, so everybody reads them. */
export const LESSONS_OF_ALL = Prisma.sql`
  SELECT 'lesson', lesson."title", ARRAY[lesson."learnt"],
    CASE WHEN lesson."retiredAt" IS NULL THEN 'accepted' ELSE 'retired' END, '', jsonb_build_object('kind', 'lessons')
  FROM "Lesson" lesson
  WHERE lesson."decision" = 'accepted' AND lesson."programmeId" NOT IN (SELECT "id" FROM readable)`
