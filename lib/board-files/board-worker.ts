import { workerData } from 'node:worker_threads'
import { answerFromThread } from '@/lib/threads/thread-answer'
import { readArchive, type RolesSaid } from './read-archive'

/** The thread that reads one archive and ends. */
const { archive, roles } = workerData as { archive: Uint8Array; roles: RolesSaid }

void answerFromThread(() => readArchive(archive, roles))
