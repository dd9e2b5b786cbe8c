import type { PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { Prisma } from '@/lib/db/generated/client'
import { usedOfTheWorks } from '@/lib/programme/works/works-mark'
import type { WorksHead } from '@/shared/trail/works-head'

/** Where each trail of the works ends that a programme's facts rest on, in the order of kind and code. */
export const worksHeadsOf = (db: PrismaClient | Transaction, programmeId: string): Promise<WorksHead[]> =>
  db.$queryRaw<WorksHead[]>`
    SELECT trail."id" AS "trailId", subject."kind", subject."code", trail."seq", trail."headHash" AS "hash"
    FROM (${usedOfTheWorks(Prisma.sql`SELECT ${programmeId}::uuid`)}) AS used
    JOIN "TrailSubject" AS subject ON subject."id" = used."trailId"
    JOIN "Trail" AS trail ON trail."id" = subject."id"::text
    WHERE trail."seq" > 0
    ORDER BY subject."kind", subject."code"`
