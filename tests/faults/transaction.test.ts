import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest'
import type { PrismaClient } from '@/lib/db/generated/client'
import { inTransaction, type Transaction } from '@/lib/db/transaction'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let fresh: FreshDatabase
let client: PrismaClient

beforeAll(async () => {
  fresh = await freshDatabase()
  client = fresh.client
  await client.$executeRaw`CREATE TABLE account (name text PRIMARY KEY, amount int NOT NULL)`
})

afterAll(() => fresh.drop())

beforeEach(async () => {
  await client.$executeRaw`DELETE FROM account`
  await client.$executeRaw`INSERT INTO account VALUES ('one', 0), ('other', 0)`
})

const addTo = (transaction: Transaction, name: string) =>
  transaction.$executeRaw`UPDATE account SET amount = amount + 1 WHERE name = ${name}`

const amounts = () => client.$queryRaw`SELECT name, amount FROM account ORDER BY name`

/** Lets everyone go on once all have arrived; later arrivals do not wait. */
function meetingOf(count: number): () => Promise<void> {
  let arrived = 0
  let open = () => undefined as void
  const opened = new Promise<void>((resolve) => (open = resolve))
  return () => {
    arrived++
    if (arrived === count) open()
    return opened
  }
}

test('a transaction reads what is committed, and its result comes back', async () => {
  const rows = await inTransaction((transaction) => transaction.$queryRaw`SHOW transaction_isolation`)
  expect(rows).toEqual([{ transaction_isolation: 'read committed' }])
})

test('a transaction that throws leaves nothing and is not run again', async () => {
  let runs = 0
  const failing = inTransaction(async (transaction) => {
    runs++
    await addTo(transaction, 'one')
    throw new Error('refused for a reason of the trade')
  })
  await expect(failing).rejects.toThrow('refused for a reason of the trade')
  expect(runs).toBe(1)
  expect(await amounts()).toEqual([
    { name: 'one', amount: 0 },
    { name: 'other', amount: 0 },
  ])
})

test('two transactions that block each other both succeed, and each counts once', async () => {
  let runs = 0
  const meet = meetingOf(2)
  const crossing = (first: string, second: string) =>
    inTransaction(async (transaction) => {
      runs++
      await addTo(transaction, first)
      await meet()
      await addTo(transaction, second)
    })
  await Promise.all([crossing('one', 'other'), crossing('other', 'one')])
  expect(runs).toBe(3)
  expect(await amounts()).toEqual([
    { name: 'one', amount: 2 },
    { name: 'other', amount: 2 },
  ])
})

test.each(['40001', '40P01'])('work undone with %s six times in a row gives up and says so', async (code) => {
  let runs = 0
  const undone = inTransaction(async (transaction) => {
    runs++
    await transaction.$executeRawUnsafe(
      `DO $$ BEGIN RAISE EXCEPTION 'undone' USING ERRCODE = '${code}'; END $$`,
    )
  })
  await expect(undone).rejects.toThrow()
  expect(runs).toBe(6)
})

test('a broken rule of the database is not run again', async () => {
  let runs = 0
  const doubled = inTransaction(async (transaction) => {
    runs++
    await transaction.$executeRaw`INSERT INTO account VALUES ('one', 1)`
  })
  await expect(doubled).rejects.toThrow()
  expect(runs).toBe(1)
})

test('twenty at once on one row, over a pool of ten, lose nothing', async () => {
  const turns = Array.from({ length: 20 }, () =>
    inTransaction(async (transaction) => {
      const [row] = await transaction.$queryRaw<{ amount: number }[]>`
        SELECT amount FROM account WHERE name = 'one' FOR UPDATE`
      await transaction.$executeRaw`UPDATE account SET amount = ${(row?.amount ?? 0) + 1} WHERE name = 'one'`
    }),
  )
  await Promise.all(turns)
  expect(await amounts()).toContainEqual({ name: 'one', amount: 20 })
})

test('a statement that does not end is ended by the server, after half a minute', async () => {
  const rows = await inTransaction((transaction) => transaction.$queryRaw`SHOW statement_timeout`)
  expect(rows).toEqual([{ statement_timeout: '30s' }])
})
