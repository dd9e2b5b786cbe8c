import { randomUUID } from 'node:crypto'
import { fileURLToPath } from 'node:url'
import { afterEach, beforeEach, expect, inject, test } from 'vitest'
import { withConnection } from '@/lib/db/connect'
import { prepareTables } from '@/lib/db/first-run'
import { withDatabase } from '@/tests/setup/test-server'

const MIGRATIONS = fileURLToPath(new URL('../../prisma/migrations', import.meta.url))

let name: string
let url: string
let loads: number

beforeEach(async () => {
  name = `liquidus_first_${randomUUID().slice(0, 8)}`
  url = withDatabase(inject('testDatabase').url, name)
  loads = 0
  await onServer(`CREATE DATABASE ${name} ENCODING 'UTF8' TEMPLATE template0`)
})

afterEach(() => onServer(`DROP DATABASE IF EXISTS ${name} WITH (FORCE)`))

const onServer = (sql: string) => withConnection(inject('testDatabase').url, (client) => client.query(sql))

const query = (sql: string) =>
  withConnection(url, async (client) => (await client.query<Record<string, unknown>>(sql)).rows)

const addPerson = () =>
  query(
    `INSERT INTO "Person" (id, email, name, "createdAt") VALUES ('${randomUUID()}', '${randomUUID()}', 'Somebody', now())`,
  )

const people = async () => (await query('SELECT count(*)::int AS people FROM "Person"'))[0]?.people

async function load(): Promise<void> {
  loads++
  await addPerson()
}

const start = (wanted = true, loading = load) => prepareTables(url, MIGRATIONS, { wanted, load: loading })

test('an empty database receives the demo once', async () => {
  expect(await start()).toBe('loaded now')
  expect(await start()).toBe('loaded before')
  expect(loads).toBe(1)
  expect(await people()).toBe(1)
})

test('a demo not wanted is not loaded, and one loaded before stays when it is no longer wanted', async () => {
  expect(await start(false)).toBe('absent')
  expect(loads).toBe(0)
  expect(await start()).toBe('loaded now')
  expect(await start(false)).toBe('loaded before')
})

test('a database with people in it never receives the demo', async () => {
  await start(false)
  await addPerson()
  expect(await start()).toBe('absent')
  expect(loads).toBe(0)
  expect(await people()).toBe(1)
})

test('a demo broken off half way is taken out whole and loaded again', async () => {
  const brokenOff = async () => {
    await addPerson()
    await addPerson()
    throw new Error('the power failed')
  }
  await expect(start(true, brokenOff)).rejects.toThrow('the power failed')
  expect(await people()).toBe(2)
  expect(await start()).toBe('loaded now')
  expect(await people()).toBe(1)
})

test('a demo broken off half way is taken out even when it is no longer wanted', async () => {
  const brokenOff = async () => {
    await addPerson()
    throw new Error('the power failed')
  }
  await expect(start(true, brokenOff)).rejects.toThrow('the power failed')
  expect(await start(false)).toBe('absent')
  expect(await people()).toBe(0)
})

test('of three instances that start at the same moment, one loads the demo', async () => {
  expect((await Promise.all([start(), start(), start()])).sort()).toEqual([
    'loaded before',
    'loaded before',
    'loaded now',
  ])
  expect(loads).toBe(1)
})
