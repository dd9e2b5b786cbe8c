-- AlterTable
ALTER TABLE "PlanItem" ADD COLUMN     "lesson" JSONB;

-- AlterTable
ALTER TABLE "Requirement" ADD COLUMN     "lesson" JSONB;

-- Until now an item brought by a lesson named it at the end of what it asks, and a requirement in its clause.
-- Those texts are exactly what the program wrote; what a person typed alike is left as it stands.
UPDATE "PlanItem" AS item
SET "lesson" = jsonb_build_object('programme', programme."code", 'number', lesson."number", 'inAsks', true)
FROM "Lesson" AS lesson
JOIN "Programme" AS programme ON programme."id" = lesson."programmeId"
WHERE lesson."decision" = 'accepted'
  AND lesson."change" ->> 'kind' = 'item'
  AND item."added" ->> 'title' = lesson."change" -> 'item' ->> 'title'
  AND item."added" ->> 'asks' = (lesson."change" -> 'item' ->> 'asks')
    || ' (Learnt in ' || programme."code" || ', lesson ' || lesson."number" || '.)';

UPDATE "Requirement" AS requirement
SET "lesson" = jsonb_build_object('programme', programme."code", 'number', lesson."number")
FROM "Lesson" AS lesson
JOIN "Programme" AS programme ON programme."id" = lesson."programmeId"
WHERE lesson."decision" = 'accepted'
  AND lesson."change" ->> 'kind' = 'limit'
  AND requirement."limit" = lesson."change" ->> 'limit'
  AND requirement."authority" = 'company'
  AND requirement."document" = 'Lessons learnt'
  AND requirement."clause" = programme."code" || ', lesson ' || lesson."number";
