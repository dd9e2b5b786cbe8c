import { randomUUID } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { InputOf } from '@/lib/commands/all-commands'
import { perform } from '@/lib/commands/perform'
import { hashPassword } from '@/lib/auth/password'
import { newSecretToken } from '@/lib/auth/secret-token'
import { closeDatabase, database } from '@/lib/db/client'
import { withConnection } from '@/lib/db/connect'
import { freePort } from '@/lib/db/embedded-process'
import { startEmbeddedServer } from '@/lib/db/embedded-server'
import { migrate } from '@/lib/db/migrate'
import { CALLS_AT_ONCE } from '@/lib/machines/call-rate'
import type { CommandName } from '@/shared/commands/all-faces'
import { hiddenFieldsOf, signedInAt } from '@/tests/faults/plain-browser'
import { runScript, type Program } from '@/tests/faults/programs'

/*
 * The app is killed while machines push readings and a person receives lots, again and again. Whoever got no answer
 * sends the same again, as a machine and a browser would. What was acknowledged is there, once; the chains are whole.
 */

const LONGEST_MS = 900_000
const KILLS = 3
const PUSHERS = 4
const [MACHINE, LOG, SUPPLIER] = ['Wave of the test', 'BATH', 'Supplier of the test']
const MINUTE_MS = 60_000
const START = Date.parse('2026-01-01T00:00:00Z')
const READINGS_A_CALL = 5
/** With what is sent again, fewer than a machine may call at once: beyond that it is told to wait. */
const CALLS_A_ROUND = CALLS_AT_ONCE * (2 / 3)
const PERSON = { email: 'received@test.invalid', password: 'correct horse battery staple' }

let above: string
let dataFolder: string
let port: number
let token: string
const { DATABASE_URL } = process.env

beforeAll(async () => {
  above = mkdtempSync(join(tmpdir(), 'liquidus-killed-'))
  dataFolder = join(above, 'data')
  port = await freePort()
  await withServer(async (url) => {
    await migrate(url, 'prisma/migrations')
    process.env.DATABASE_URL = url
    try {
      await openWorks()
    } finally {
      await closeDatabase()
      process.env.DATABASE_URL = DATABASE_URL
    }
  })
}, LONGEST_MS)
afterAll(() => rmSync(above, { recursive: true, force: true }))

async function withServer<Result>(work: (url: string) => Promise<Result>): Promise<Result> {
  const server = await startEmbeddedServer(dataFolder)
  try {
    return await work(server.url)
  } finally {
    await server.stop()
  }
}

async function openWorks(): Promise<void> {
  const [production, quality] = [randomUUID(), randomUUID()]
  const createdAt = new Date()
  await database().person.createMany({
    data: [
      {
        id: production,
        email: 'opens@test.invalid',
        name: 'A foreman',
        worksDepartment: 'production',
        createdAt,
      },
      {
        id: quality,
        email: PERSON.email,
        name: 'A receiver',
        passwordHash: await hashPassword(PERSON.password),
        worksDepartment: 'quality',
        createdAt,
      },
    ],
  })
  const give =
    (person: string) =>
    async <N extends CommandName>(command: N, input: InputOf<N>) => {
      const outcome = await perform(person, command, input, { key: randomUUID() })
      if (!outcome.ok) throw new Error(outcome.message)
    }
  const secret = newSecretToken()
  token = secret.token
  await give(production)('open-line', { code: 'L', name: 'A line' })
  await give(production)('open-machine', { line: 'L', code: MACHINE, kind: 'wave' })
  await give(production)('open-log', {
    machine: MACHINE,
    code: LOG,
    characteristic: 'bath-temperature',
    instrument: null,
  })
  await give(production)('create-machine-token', {
    machine: MACHINE,
    name: 'The wave',
    tokenHash: secret.tokenHash,
  })
  await give(quality)('add-supplier', { supplier: SUPPLIER })
}

const ACKNOWLEDGED = 'acknowledged'

/** Something sent with a key of its own until it is acknowledged. */
interface Sent {
  /** That, or what was answered instead. */
  readonly send: () => Promise<string>
  readonly name: string
  answered: string
}

/** What a server answered that did not acknowledge. */
const refused = async (response: Response): Promise<string> =>
  `${response.status}: ${(await response.text()).slice(0, 500)}`

const base = () => `http://127.0.0.1:${port}`
let calls = 0

function aPush(): Sent {
  const number = calls++
  const at = (reading: number) => START + (number * READINGS_A_CALL + reading) * MINUTE_MS
  const body = JSON.stringify({
    log: LOG,
    readings: Array.from({ length: READINGS_A_CALL }, (_, reading) => ({
      at: new Date(at(reading)).toISOString(),
      bathC: 250,
    })),
  })
  const headers = {
    authorization: `Bearer ${token}`,
    'content-type': 'application/json',
    'idempotency-key': `call-${number}`,
  }
  return {
    name: String(at(0)),
    answered: 'not yet',
    send: async () => {
      const response = await fetch(`${base()}/api/readings`, { method: 'POST', headers, body })
      if (!response.ok) return refused(response)
      await response.text()
      return ACKNOWLEDGED
    },
  }
}

/** A lot typed into the form as it stands on the page; sent again, it is the same form with the same key. */
async function aLot(cookie: string): Promise<Sent> {
  const code = `LOT-${calls++}`
  const address = `${base()}/works/suppliers/${encodeURIComponent(SUPPLIER)}`
  const page = await (await fetch(address, { headers: { cookie } })).text()
  const typed = {
    ...hiddenFieldsOf(page, 'Receive a lot'),
    code,
    kind: 'bare board',
    part: 'A board',
    quantity: '10',
    receivedOn: '2026-01-05',
    temperatureC: '22',
    relativeHumidityPct: '45',
    packing: 'sealed',
  }
  return {
    name: code,
    answered: 'not yet',
    send: async () => {
      const body = new FormData()
      for (const [name, value] of Object.entries(typed)) body.set(name, value)
      const response = await fetch(address, { method: 'POST', headers: { cookie }, body, redirect: 'manual' })
      if (response.status !== 303) return refused(response)
      await response.text()
      return ACKNOWLEDGED
    },
  }
}

async function attempt(sent: Sent): Promise<void> {
  if (sent.answered === ACKNOWLEDGED) return
  sent.answered = await sent.send().catch((error: unknown) => String((error as Error).cause ?? error))
}

/** Works until the app is gone; answers what it began. */
async function workUntil(gone: AbortSignal, begin: () => Promise<Sent>): Promise<Sent[]> {
  const begun: Sent[] = []
  while (!gone.aborted) {
    const sent = await begin().catch(() => undefined)
    if (!sent) return begun
    begun.push(sent)
    await attempt(sent)
  }
  return begun
}

const start = async (): Promise<Program> => {
  const app = runScript('scripts/start.ts', [], {
    DATABASE_URL: '',
    LIQUIDUS_DATA: dataFolder,
    LIQUIDUS_DEMO: 'off',
    PORT: String(port),
  })
  await app.line(/^Ready:/)
  return app
}

test(
  'what was acknowledged before a kill is there once, and what is sent again is not doubled',
  async () => {
    const pushes: Sent[] = []
    const lots: Sent[] = []
    for (let kill = 0; kill < KILLS; kill++) {
      const app = await start()
      const cookie = await signedInAt(base(), PERSON)
      for (const sent of [...pushes, ...lots]) await attempt(sent)
      const gone = new AbortController()
      const enough = pushes.length + lots.length + CALLS_A_ROUND
      const counted = (begin: () => Promise<Sent>) => async () => {
        const sent = await begin()
        // Killed in the middle of whatever the others have under way.
        if (calls >= enough && !gone.signal.aborted) {
          gone.abort()
          app.process.kill('SIGKILL')
        }
        return sent
      }
      const [received, ...pushed] = await Promise.all([
        workUntil(
          gone.signal,
          counted(() => aLot(cookie)),
        ),
        ...Array.from({ length: PUSHERS }, () =>
          workUntil(
            gone.signal,
            counted(async () => aPush()),
          ),
        ),
      ])
      lots.push(...received)
      pushes.push(...pushed.flat())
      await app.ended
    }
    const last = await start()
    for (const sent of [...pushes, ...lots]) {
      await attempt(sent)
      expect(sent.answered, sent.name).toBe(ACKNOWLEDGED)
    }
    last.process.kill('SIGTERM')
    await last.ended

    expect(lots.length).toBeGreaterThan(KILLS)
    expect(pushes.length).toBeGreaterThan(KILLS * PUSHERS)
    await withServer(async (url) => {
      const stored = await withConnection(url, async (client) => ({
        batches: (
          await client.query<{ first: string; count: number }>(
            `SELECT "readings"->'columns'->'at'->>0 AS "first", "count" FROM "ReadingBatch"`,
          )
        ).rows,
        lots: (await client.query<{ code: string }>(`SELECT "code" FROM "Lot"`)).rows,
      }))
      expect(stored.batches.map(({ first }) => first).sort()).toEqual(pushes.map(({ name }) => name).sort())
      expect(new Set(stored.batches.map(({ count }) => count))).toEqual(new Set([READINGS_A_CALL]))
      expect(stored.lots.map(({ code }) => code).sort()).toEqual(lots.map(({ name }) => name).sort())
      const verified = runScript('scripts/verify.ts', [], { DATABASE_URL: url, LIQUIDUS_DATA: dataFolder })
      await verified.ended
      // The people of this test were put into the database beside the door, which the installation's own trail rightly tells.
      for (const kept of [`Machine ${MACHINE}`, `Supplier ${SUPPLIER}`])
        expect(verified.printed()).toMatch(new RegExp(`^${kept}: WHOLE`, 'm'))
    })
  },
  LONGEST_MS,
)
