import { workerData } from 'node:worker_threads'
import { answerFromThread } from '@/lib/threads/thread-answer'
import { readWorkbook } from './read-workbook'

/** The thread that reads one workbook and ends. */
void answerFromThread(() => readWorkbook(workerData as Uint8Array))
