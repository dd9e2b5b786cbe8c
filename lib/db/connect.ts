import { Client } from 'pg'
import { StartRefused } from '@/lib/settings/start-refused'

const LONGEST_CONNECT_MS = 10_000

/**
 * Runs a piece of work over one plain connection, and closes it whatever happens.
 * A server that cannot be reached, or lets nobody in, is said in a sentence that repeats no password.
 */
export async function withConnection<Result>(
  url: string,
  work: (client: Client) => Promise<Result>,
): Promise<Result> {
  const client = new Client({ connectionString: url, connectionTimeoutMillis: LONGEST_CONNECT_MS })
  client.on('error', () => undefined) // A connection lost between statements shows itself at the next one.
  try {
    await client.connect()
  } catch (error) {
    const { hostname, port, pathname } = new URL(url)
    throw new StartRefused(
      `The database ${pathname.slice(1)} at ${hostname}:${port || 5432} does not answer: ${reason(error)}. ` +
        'Check that it runs, and that DATABASE_URL has the right host, port, name and password.',
      { cause: error },
    )
  }
  try {
    return await work(client)
  } finally {
    await client.end()
  }
}

/** Several addresses tried in vain arrive as one error without a message of its own. */
function reason(error: unknown): string {
  if (error instanceof AggregateError) return error.errors.map(reason).join(', ')
  return error instanceof Error ? error.message : String(error)
}
