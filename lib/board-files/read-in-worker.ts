import { join } from 'node:path'
import { Worker, type WorkerOptions } from 'node:worker_threads'
import { Refused } from '@/shared/refused'
import type { BoardReading, ReadingAnswer } from './board-reading'
import type { RolesSaid } from './read-archive'

/** However hostile an archive is, its reading ends here, and takes no more memory than this. */
export const WORKER_LIMITS = { milliseconds: 60_000, heapMiB: 400 } as const

/**
 * Reads an archive of board files in a thread of its own, so that whoever else
 * asks for a page meanwhile gets it as soon as ever.
 *
 * Errors: Refused, where the archive is none or its reading takes too long or too much.
 */
export function readInWorker(
  archive: Uint8Array,
  roles: RolesSaid,
  limits: { milliseconds: number; heapMiB: number } = WORKER_LIMITS,
): Promise<BoardReading> {
  return new Promise((resolve, reject) => {
    const worker = startThread({
      workerData: { archive, roles },
      resourceLimits: { maxOldGenerationSizeMb: limits.heapMiB },
    })
    const late = setTimeout(() => {
      void worker.terminate()
      reject(
        new Refused(
          `The files were not read within ${limits.milliseconds / 1000} s. Is the board very large?`,
        ),
      )
    }, limits.milliseconds)
    worker.once('message', (answer: ReadingAnswer) => {
      if (answer.kind === 'read') resolve(answer.reading)
      else reject(new Refused(answer.sentence))
    })
    worker.once('error', (error) =>
      reject(
        'code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY'
          ? new Refused(`Reading the files takes more than ${limits.heapMiB} MiB of memory.`)
          : error,
      ),
    )
    worker.once('exit', () => clearTimeout(late))
  })
}

/** The bundler would follow `new Worker` and fail on what reads TypeScript: the thread is Node's own affair. */
const startThread = (options: WorkerOptions): Worker =>
  Reflect.construct(Worker, [
    join(process.cwd(), 'lib', 'board-files', 'board-thread.mjs'),
    options,
  ]) as Worker
