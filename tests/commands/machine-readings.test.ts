import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { POST } from '@/app/api/readings/route'
import { database } from '@/lib/db/client'
import { newSecretToken } from '@/lib/auth/secret-token'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
let log: string
let token: string
let tokenId: string
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
  await world.must('production', 'open-line', { code: 'Line 1', name: 'A line' })
  await world.must('production', 'open-machine', { line: 'Line 1', code: 'Wave 1', kind: 'wave' })
  await world.must('production', 'open-machine', { line: 'Line 1', code: 'Wave 2', kind: 'wave' })
})
afterAll(() => db.drop())
beforeEach(async () => {
  log = `BATH-${randomUUID().slice(0, 8)}`
  await world.must('production', 'open-log', {
    machine: 'Wave 1',
    code: log,
    characteristic: 'bath-temperature',
    instrument: null,
  })
  const made = newSecretToken()
  token = made.token
  const { result } = await world.must('production', 'create-machine-token', {
    machine: 'Wave 1',
    name: `Bath meter ${log}`,
    tokenHash: made.tokenHash,
  })
  tokenId = String(result['token'])
})

const readings = [
  { at: '2026-03-02T06:00:00Z', bathC: 247.5 },
  { at: '2026-03-02T08:00:00+01:00', bathC: 248.1 },
]

const push = (body: unknown, headers: Record<string, string> = {}) =>
  POST(
    new Request('http://localhost/api/readings', {
      method: 'POST',
      headers: { authorization: `Bearer ${token}`, 'content-type': 'application/json', ...headers },
      body: typeof body === 'string' ? body : JSON.stringify(body),
    }),
  )

const stored = async () => {
  const batches = await database().readingBatch.findMany({ where: { log: { code: log } } })
  return batches.map(({ readings: kept, addedById }) => ({ kept, addedById }))
}

test.each(['NO\0LOG', 'NO \ud800 LOG'])(
  'a log code that no log can have, %j, is answered, not failed at',
  async (code) => {
    const answer = await push({ log: code, readings })
    expect([400, 404]).toContain(answer.status)
    expect(answer.headers.get('content-type')).toBe('application/problem+json')
  },
)

describe('readings pushed by a machine', () => {
  test('are stored as the person who let it in, their instants in UTC', async () => {
    const answer = await push({ log, readings })
    expect(answer.status).toBe(200)
    expect(await answer.json()).toMatchObject({ log, readings: 2 })
    expect(await stored()).toEqual([
      {
        addedById: world.person.production,
        kept: {
          count: 2,
          columns: {
            at: [Date.UTC(2026, 2, 2, 6), Date.UTC(2026, 2, 2, 7)],
            bathC: [247.5, 248.1],
          },
        },
      },
    ])
  })

  test('are stored once when the same call comes again, with or without a key', async () => {
    await push({ log, readings })
    const again = await push({ log, readings })
    expect(again.status).toBe(200)
    await push(
      { log, readings: [{ at: '2026-03-03T06:00:00Z', bathC: 246 }] },
      { 'idempotency-key': 'shift 7' },
    )
    await push(
      { log, readings: [{ at: '2026-03-03T06:00:00Z', bathC: 246 }] },
      { 'idempotency-key': 'shift 7' },
    )
    expect(await stored()).toHaveLength(2)
  })

  test('are refused whole when one is wrong, and it is named', async () => {
    const answer = await push({ log, readings: [...readings, { at: 'yesterday', bathC: '247' }] })
    expect(answer.status).toBe(400)
    expect(answer.headers.get('content-type')).toContain('application/problem+json')
    const { problems } = (await answer.json()) as { problems: Record<string, string> }
    expect(Object.keys(problems)).toEqual(['readings.2.at', 'readings.2.bathC'])
    expect(await stored()).toEqual([])
  })

  test('are refused in the future, with the command’s own sentence', async () => {
    const answer = await push({ log, readings: [{ at: '2999-01-01T00:00:00Z', bathC: 247 }] })
    expect(answer.status).toBe(409)
    expect(((await answer.json()) as { detail: string }).detail).toContain('Nothing was stored')
    expect(await stored()).toEqual([])
  })

  test.each([
    ['no JSON', '{"log":', 400],
    ['a column the log has not', { log: 'x', readings: [] }, 400],
    ['more than a mebibyte', ' '.repeat(1024 * 1024 + 1), 413],
  ])('are refused as %s', async (_what, body, status) => {
    expect((await push(body)).status).toBe(status)
  })

  test('are refused for a log of another machine', async () => {
    const elsewhere = `ELSE-${randomUUID().slice(0, 8)}`
    await world.must('production', 'open-log', {
      machine: 'Wave 2',
      code: elsewhere,
      characteristic: 'bath-temperature',
      instrument: null,
    })
    expect((await push({ log: elsewhere, readings })).status).toBe(404)
  })
})

describe('a machine’s token', () => {
  test('lets nobody in once it is stopped', async () => {
    await world.must('quality', 'revoke-machine-token', {
      works: { kind: 'machine', code: 'Wave 1' },
      token: tokenId,
    })
    expect((await push({ log, readings })).status).toBe(401)
    expect(await stored()).toEqual([])
  })

  test('lets nobody in that was never given', async () => {
    const { token: unknown } = newSecretToken()
    for (const authorization of [`Bearer ${unknown}`, `Basic ${token}`, 'Bearer', ''])
      expect((await push({ log, readings }, { authorization })).status).toBe(401)
  })

  test('may do no more than the person who made it: out of the department, out of the log', async () => {
    const {
      id: personId,
      email,
      name,
    } = await database().person.findUniqueOrThrow({
      where: { id: world.person.production },
    })
    const belongsTo = (worksDepartment: 'production' | null) =>
      world.must('administrator', 'change-person', {
        personId,
        email,
        name,
        rights: 'member',
        worksDepartment,
      })
    await belongsTo(null)
    const answer = await push({ log, readings })
    await belongsTo('production')
    expect(answer.status).toBe(409)
    expect(await stored()).toEqual([])
  })

  test('itself is stored nowhere', async () => {
    const rows = await database().machineToken.findMany()
    expect(JSON.stringify(rows)).not.toContain(token)
  })
})
