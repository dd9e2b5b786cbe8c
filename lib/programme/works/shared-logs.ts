import type { Prisma, PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { logName } from '@/shared/works/log-name'

type Db = PrismaClient | Transaction

/**
 * The logs that speak for a programme: those recorded in it before machines had logs of their own, those taken of its
 * boards alone, and those of every machine on a line that it states or stated.
 */
const speakingFor = (programmeId: string): Prisma.LogWhereInput => ({
  OR: [
    { trailId: programmeId },
    { onlyForId: programmeId },
    { onlyForId: null, atMachine: { line: { programmes: { some: { programmeId } } } } },
  ],
})

const IN_ORDER = [{ at: 'asc' as const }, { id: 'asc' as const }]

/** In the order in which they were opened, each with what its trail is about. */
export const loadLogs = (db: Db, programmeId: string) =>
  db.log.findMany({
    where: speakingFor(programmeId),
    include: { subject: { select: { kind: true, code: true } }, atMachine: { select: { code: true } } },
    orderBy: IN_ORDER,
  })
export type LogWithSubject = Awaited<ReturnType<typeof loadLogs>>[number]

/** The log that a programme calls so; undefined where none speaks for it by that name. */
export const logCalled = async (
  db: Db,
  programme: { readonly id: string; readonly code: string },
  name: string,
): Promise<LogWithSubject | undefined> =>
  (await loadLogs(db, programme.id)).find(
    ({ code, subject }) => logName(code, subject, programme.code) === name,
  )

/** The batches of those logs and of some tests of lots, without their readings. */
export const loadBatches = (db: Db, programmeId: string, tests: readonly { readonly id: string }[]) =>
  db.readingBatch.findMany({
    where: {
      OR: [{ log: speakingFor(programmeId) }, { lotTestId: { in: tests.map(({ id }) => id) } }],
    },
    select: { id: true, trailId: true, lotTestId: true, logId: true },
    orderBy: IN_ORDER,
  })
