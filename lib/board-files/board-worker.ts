import { parentPort, workerData } from 'node:worker_threads'
import { Refused } from '@/shared/refused'
import type { ReadingAnswer } from './board-reading'
import { readArchive, type RolesSaid } from './read-archive'

/** The thread that reads one archive and ends. */
const { archive, roles } = workerData as { archive: Uint8Array; roles: RolesSaid }

function answer(): ReadingAnswer {
  try {
    return { kind: 'read', reading: readArchive(archive, roles) }
  } catch (error) {
    if (error instanceof Refused) return { kind: 'refused', sentence: error.message }
    throw error
  }
}

parentPort!.postMessage(answer())
