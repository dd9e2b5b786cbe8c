import { workerData } from 'node:worker_threads'
import { answerFromThread } from '@/lib/threads/thread-answer'
import { readArchive, type BoardSaid } from './read-archive'

/** The thread that reads one archive and ends. */
const { archive, said } = workerData as { archive: Uint8Array; said: BoardSaid }

void answerFromThread(() => readArchive(archive, said))
