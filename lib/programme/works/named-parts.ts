import { Prisma } from '@/lib/db/generated/client'
import { partsList } from '@/shared/plan/parameters/parts-list'

/**
 * Pairs of a programme and the number of a part that it names, as "programmeId" and "part": in its newest parts list, in
 * one that a change notice proposes, or in an alternative of an option study. `programmes` selects their ids.
 */
export const namedParts = (programmes: Prisma.Sql): Prisma.Sql => Prisma.sql`
  SELECT list."programmeId", named #>> '{}' AS "part"
  FROM (
    (SELECT DISTINCT ON (revision."programmeId") revision."programmeId", revision."value"
     FROM "Revision" AS revision
     WHERE revision."parameter" = ${partsList.key} AND revision."programmeId" = ANY(${programmes})
     ORDER BY revision."programmeId", revision."number" DESC)
    UNION ALL
    SELECT change."programmeId", change."content"->'value' FROM "NoticeChange" AS change
    WHERE change."kind" = 'value' AND change."content"->>'parameter' = ${partsList.key}
      AND change."droppedAt" IS NULL AND change."programmeId" = ANY(${programmes})
    UNION ALL
    SELECT study."programmeId", alternative->'values'->${partsList.key} FROM "OptionStudy" AS study
    CROSS JOIN LATERAL jsonb_array_elements(study."alternatives") AS alternative
    WHERE study."programmeId" = ANY(${programmes})
  ) AS list
  CROSS JOIN LATERAL jsonb_path_query(list."value", '$[*].part') AS named`
