import { Client } from 'pg'
import { urlInUse } from '@/lib/db/url-in-use'
import { readerOver, type RowReader } from '@/lib/db/row-reader'
import { turns } from '@/lib/db/turns'

/** Everything in the database as it was at one moment. */
export interface Snapshot extends RowReader {
  close(): Promise<void>
}

/** A reader who went away without closing must not hold the moment for ever: old rows are kept for it. */
const LONGEST_IDLE_MS = 60_000
const LONGEST_STATEMENT_MS = 120_000
const LONGEST_CONNECT_MS = 10_000
const MAX_AT_ONCE = 2

const turn = turns(MAX_AT_ONCE)

/**
 * Opens a connection of its own that reads in one REPEATABLE READ transaction: long readers neither
 * take the app's connections nor see a command half done. At most two at once; others wait.
 */
export async function openSnapshot(): Promise<Snapshot> {
  const leave = await turn()
  const client = new Client({
    connectionString: urlInUse(),
    connectionTimeoutMillis: LONGEST_CONNECT_MS,
    statement_timeout: LONGEST_STATEMENT_MS,
    idle_in_transaction_session_timeout: LONGEST_IDLE_MS,
  })
  client.on('error', () => undefined) // A connection lost between statements shows itself at the next one.
  client.on('end', leave)
  try {
    await client.connect()
    await client.query('BEGIN TRANSACTION ISOLATION LEVEL REPEATABLE READ, READ ONLY')
  } catch (error) {
    await client.end().catch(() => undefined)
    leave()
    throw error
  }
  return { ...readerOver(client), close: () => client.end() }
}
