import { parentPort, workerData } from 'node:worker_threads'
import { Refused } from '@/shared/refused'
import { readWorkbook } from './read-workbook'
import type { WorkbookAnswer } from './workbook-cell'

/** The thread that reads one workbook and ends. */
async function answer(): Promise<WorkbookAnswer> {
  try {
    return { kind: 'read', rows: await readWorkbook(workerData as Uint8Array) }
  } catch (error) {
    if (error instanceof Refused) return { kind: 'refused', sentence: error.message }
    throw error
  }
}

void answer().then((told) => parentPort!.postMessage(told))
