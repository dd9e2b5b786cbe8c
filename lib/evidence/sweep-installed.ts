import { setTimeout as wait } from 'node:timers/promises'
import { database } from '@/lib/db/client'
import { installedStore } from '@/lib/evidence/installed-store'
import { sweepEvidence, type SweepResult } from '@/lib/evidence/sweep'
import { log } from '@/lib/log/log'
import { MS_PER_DAY } from '@/shared/quantity/calendar'

/** Long enough for somebody to come back to an import that was left at its preview. */
const UNNAMED_KEPT_MS = 7 * MS_PER_DAY

/**
 * Clears the installation's store of uploads that nothing names and that are a
 * week old. The register's row goes first: where it is gone, no command can name
 * the file any more, and where a command was quicker, the row is young and stays.
 */
export async function sweepInstalled(now = Date.now()): Promise<SweepResult> {
  const before = new Date(now - UNNAMED_KEPT_MS)
  await database().$executeRaw`
    DELETE FROM "StoredFile" AS file
    WHERE file."storedAt" < ${before}
      AND NOT EXISTS (SELECT FROM "Evidence" WHERE "sha256" = file."sha256")
      AND NOT EXISTS (SELECT FROM "AnswerFile" WHERE "sha256" = file."sha256")
      AND NOT EXISTS (SELECT FROM "ReadingBatch" WHERE "sha256" = file."sha256")`
  // A registration ends likewise: from then on only a record leads to the file.
  await database().upload.deleteMany({ where: { at: { lt: before } } })
  const registered = await database().storedFile.findMany({ select: { sha256: true } })
  const { folder } = await installedStore()
  return sweepEvidence(folder, {
    referenced: new Set(registered.map(({ sha256 }) => sha256)),
    olderThanMs: UNNAMED_KEPT_MS,
    now,
  })
}

/** Sweeps now and once a day until told to stop; a sweep that fails is logged, and the next one tries again. */
export async function sweepDaily(
  stopping: AbortSignal,
  sweep: () => Promise<SweepResult>,
  everyMs = MS_PER_DAY,
): Promise<void> {
  while (!stopping.aborted) {
    try {
      const { removedFiles, removedUnfinished } = await sweep()
      if (removedFiles + removedUnfinished > 0)
        log.info('Uploads that nothing names were cleared.', { removedFiles, removedUnfinished })
    } catch (error) {
      if (!stopping.aborted) log.error('The evidence store could not be swept.', { error })
    }
    await wait(everyMs, undefined, { signal: stopping, ref: false }).catch(() => undefined)
  }
}
