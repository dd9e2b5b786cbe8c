import type { Client } from 'pg'
import { withConnection } from './connect'
import { urlInUse } from './url-in-use'

/**
 * Does a piece of upkeep over one connection, while no other instance on this database does the same: `lock` is the
 * number that they agree on. Undefined, and nothing done, where another is at it.
 */
export const whileAlone = <Result>(
  lock: number,
  work: (client: Client) => Promise<Result>,
): Promise<Result | undefined> =>
  withConnection(urlInUse(), async (client) => {
    const { rows } = await client.query<{ mine: boolean }>('SELECT pg_try_advisory_lock($1) AS mine', [lock])
    return rows[0]?.mine ? work(client) : undefined
  })
