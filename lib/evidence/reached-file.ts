import { Prisma } from '@/lib/db/generated/client'

/** Who asks for a stored file, and in which programme. They are known to be let into it. */
export interface FileReader {
  readonly personId: string
  readonly trailId: string
}

/**
 * Whether a row `file` of "StoredFile" is there for this person in this programme: they sent it for the programme
 * themselves, or a record of the programme names it. To know its hash gives no right to it; to anybody else it is as
 * if it did not exist.
 */
export const isReached = ({ personId, trailId }: FileReader): Prisma.Sql => Prisma.sql`(
  EXISTS (SELECT FROM "Upload" AS upload
          WHERE upload."sha256" = file."sha256"
            AND upload."personId" = ${personId}::uuid
            AND upload."trailId" = ${trailId}::uuid)
  OR EXISTS (SELECT FROM "Evidence" AS evidence
             WHERE evidence."sha256" = file."sha256" AND evidence."trailId" = ${trailId}::uuid)
  OR EXISTS (SELECT FROM "AnswerFile" AS answer
             WHERE answer."sha256" = file."sha256" AND answer."programmeId" = ${trailId}::uuid)
  OR EXISTS (SELECT FROM "ReadingBatch" AS batch
             WHERE batch."sha256" = file."sha256" AND batch."trailId" = ${trailId}::uuid)
)`
