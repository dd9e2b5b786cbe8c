import { readInThread, type ThreadLimits } from '@/lib/threads/read-in-thread'
import type { BoardReading } from './board-reading'
import type { BoardSaid } from './read-archive'

const WORKER_LIMITS: ThreadLimits = { milliseconds: 60_000, heapMiB: 400 }

/** Reads an archive of board files in a thread of its own. Errors: Refused, where the archive is none or takes too long or too much. */
export const readInWorker = (
  archive: Uint8Array,
  said: BoardSaid,
  limits: ThreadLimits = WORKER_LIMITS,
): Promise<BoardReading> =>
  readInThread({
    program: ['board-files', 'board-thread.mjs'],
    given: { archive, said },
    limits,
    refusals: {
      late: `The files were not read within ${limits.milliseconds / 1000} s. Is the board very large?`,
      tooMuch: `Reading the files takes more than ${limits.heapMiB} MiB of memory.`,
    },
  })
