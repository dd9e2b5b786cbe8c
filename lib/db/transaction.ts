import { setTimeout as wait } from 'node:timers/promises'
import { database } from '@/lib/db/client'
import type { Prisma } from '@/lib/db/generated/client'
import { log } from '@/lib/log/log'

/** A client whose statements belong to one transaction. To ask for it is to say: only inside one. */
export type Transaction = Prisma.TransactionClient

const MAX_TRIES = 6
const FIRST_PAUSE_MS = 10
const LONGEST_WAIT_FOR_CONNECTION_MS = 15_000
const LONGEST_TRANSACTION_MS = 30_000

/** What the server answers when it undid a transaction for another's sake: serialisation failure, deadlock. */
const UNDONE = new Set(['40001', '40P01'])

/**
 * Runs the work in one READ COMMITTED transaction: all of it is kept, or none.
 * Where the database undid it in favour of another (deadlock, serialisation), it is run again,
 * at most five times, after a random pause that grows. So the work must touch nothing but the database.
 */
export async function inTransaction<Result>(
  work: (transaction: Transaction) => Promise<Result>,
): Promise<Result> {
  for (let tries = 1; ; tries++) {
    try {
      return await database().$transaction(work, {
        isolationLevel: 'ReadCommitted',
        maxWait: LONGEST_WAIT_FOR_CONNECTION_MS,
        timeout: LONGEST_TRANSACTION_MS,
      })
    } catch (error) {
      if (tries === MAX_TRIES || !hasLapsed(error)) throw error
      log.debug('A transaction is run again.', { tries })
      await wait(Math.random() * FIRST_PAUSE_MS * 2 ** tries)
    }
  }
}

/** Runs the work in such a transaction and takes back whatever it wrote; what it answers is as if it had been kept. */
export async function inTransactionUndone<Result>(
  work: (transaction: Transaction) => Promise<Result>,
): Promise<Result> {
  try {
    return await inTransaction(async (tx) => {
      throw new Undone(await work(tx))
    })
  } catch (error) {
    if (error instanceof Undone) return error.answer as Result
    throw error
  }
}

/** Ends a transaction that nothing is to be kept of. */
class Undone extends Error {
  constructor(readonly answer: unknown) {
    super('Nothing of this transaction is kept.')
  }
}

/** Reads in one REPEATABLE READ transaction: everything as it was at one moment. */
export const inSnapshot = <Result>(read: (transaction: Transaction) => Promise<Result>): Promise<Result> =>
  database().$transaction(read, {
    isolationLevel: 'RepeatableRead',
    maxWait: LONGEST_WAIT_FOR_CONNECTION_MS,
    timeout: LONGEST_TRANSACTION_MS,
  })

/** Prisma has a code of its own for both (P2034); a raw statement's error carries the server's, some levels down. */
function hasLapsed(error: unknown): boolean {
  for (let level: unknown = error; level !== null && typeof level === 'object';) {
    const { code, originalCode, cause, meta } = level as Record<string, unknown>
    if (code === 'P2034' || UNDONE.has(String(originalCode ?? code))) return true
    level = cause ?? (meta as Record<string, unknown> | undefined)?.driverAdapterError
  }
  return false
}
