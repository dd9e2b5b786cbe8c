import { Client } from 'pg'

/** How many statements the work sends, counted at the driver; what opens and ends a transaction is counted too. */
export async function statementsOf(work: () => Promise<unknown>): Promise<number> {
  const { query } = Client.prototype
  let count = 0
  Client.prototype.query = function (this: Client, ...given: never[]) {
    count++
    return (query as (...all: never[]) => unknown).apply(this, given)
  } as typeof query
  try {
    await work()
  } finally {
    Client.prototype.query = query
  }
  return count
}
