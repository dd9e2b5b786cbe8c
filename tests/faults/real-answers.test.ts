import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { freePort } from '@/lib/db/embedded-process'
import { FILE_POLICY } from '@/lib/evidence/file-policy'
import { runScript, type Program } from '@/tests/faults/programs'

let dataFolder: string
let port: number
let program: Program

async function start(env: Record<string, string> = {}): Promise<void> {
  port = await freePort()
  const settings = { LIQUIDUS_DATA: dataFolder, PORT: String(port), LIQUIDUS_DEMO: 'off', ...env }
  program = runScript('scripts/start.ts', [], settings)
  await program.line(/^Ready:/)
}

async function stop(): Promise<void> {
  program.process.kill('SIGTERM')
  await program.ended
}

beforeAll(async () => {
  dataFolder = join(mkdtempSync(join(tmpdir(), 'liquidus-answers-')), 'data')
  await start()
})
afterAll(async () => {
  await stop()
  rmSync(join(dataFolder, '..'), { recursive: true, force: true })
})

interface Answer {
  status: number
  headers: Record<string, string | string[] | undefined>
  text: string
}

/** Asked as it stands: `fetch` mends addresses and refuses TRACE itself. */
const ask = (
  path: string,
  method = 'GET',
  headers: Record<string, string> = {},
  body = '',
): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const sent = request({ host: '127.0.0.1', port, path, method, headers }, (response) => {
      let text = ''
      response.setEncoding('utf8').on('data', (piece: string) => (text += piece))
      response.on('end', () => resolve({ status: response.statusCode ?? 0, headers: response.headers, text }))
    })
    sent.on('error', reject).end(body)
  })

// OWASP ASVS 5.0.0 V3.2.1 and V3.4.6.
describe('every answer says what a browser may do with it', () => {
  test.each(['/sign-in', '/health', '/nowhere', '/programmes/LX-41/trail/csv'])(
    '%s is in nobody’s frame, and its type is not guessed at',
    async (path) => {
      const { headers } = await ask(path)
      expect(headers['content-security-policy']).toContain("frame-ancestors 'none'")
      expect(headers['content-security-policy']).not.toContain('sandbox')
      expect(headers).toMatchObject({ 'x-frame-options': 'DENY', 'x-content-type-options': 'nosniff' })
    },
  )

  test('evidence runs nothing: its own policy rules over the general one', async () => {
    const file = '/programmes/LX-41/files/0190a000-0000-7000-8000-000000000000'
    const { headers } = await ask(file)
    expect(headers['content-security-policy']).toBe(FILE_POLICY)
    expect(headers['x-frame-options']).toBe('DENY')
  })
})

// RFC 9110, section 15.5: what is wrong with a request is the caller's to mend, and no fault of the server.
describe('a request that is odd is the caller’s mistake, told in a sentence, with no stack in the log', () => {
  test.each([
    '/%ff',
    '/programmes/%ff',
    '/programmes/%ff/trail/csv',
    '/programmes/LX-41/items/%',
    '/api/auth/%ff',
    '/sign-in?then=%ff',
    '/api/readings?x=%c3%28',
  ])('the address %s', async (path) => {
    expect(await ask(path)).toMatchObject({ status: 400, text: expect.stringContaining('percent sign') })
  })

  test.each(['/sign-in?then=a&then=b', '/programmes?page=1&page=2', '/programmes?text=a&%74ext=b'])(
    'what is asked twice: %s',
    async (path) => {
      expect(await ask(path)).toMatchObject({ status: 400, text: expect.stringContaining('more than once') })
    },
  )

  test.each(['TRACE', 'PUT', 'DELETE', 'PATCH'])('the method %s', async (method) => {
    for (const path of ['/', '/health', '/sign-in', '/programmes/LX-41/trail/csv', '/api/readings']) {
      const answer = await ask(path, method)
      expect(answer.status).toBe(405)
      expect(answer.headers['allow']).toBe('GET, HEAD, POST, OPTIONS')
    }
  })

  test.each(['http://evil.example', 'null', 'no address', 'http://127.0.0.1:1'])(
    'a server action called from %s',
    async (origin) => {
      const headers = { origin, 'next-action': '0'.repeat(42), 'content-type': 'text/plain;charset=UTF-8' }
      expect(await ask('/sign-in', 'POST', headers, '[]')).toMatchObject({
        status: 403,
        text: expect.stringContaining('another site'),
      })
    },
  )

  test('nothing of it is a failure in the log', () => {
    expect(program.printed()).not.toMatch(/^ *at |TypeError|URIError|⨯/m)
  })

  test('from our own pages, or by a proxy that names us, a form goes on to where it was sent', async () => {
    // The framework itself is asked: it knows no such action, and says that the page is older than the app.
    const headers = { 'next-action': '0'.repeat(42), 'content-type': 'text/plain;charset=UTF-8' }
    expect(
      (await ask('/sign-in', 'POST', { ...headers, origin: `http://127.0.0.1:${port}` }, '[]')).status,
    ).toBe(409)
    const proxied = { origin: 'https://liquidus.example', 'x-forwarded-host': 'liquidus.example' }
    expect((await ask('/sign-in', 'POST', { ...headers, ...proxied }, '[]')).status).toBe(409)
  })
})

describe('the health check', () => {
  test('answers 503 within 5 s while the database hangs, and 200 once it goes on', async () => {
    const postmaster = readFileSync(join(dataFolder, 'postgres', 'postmaster.pid'), 'utf8').split('\n')[0]!
    const backends = execFileSync('pgrep', ['-P', postmaster], { encoding: 'utf8' }).trim().split('\n')
    const server = [postmaster, ...backends].map(Number)
    expect((await ask('/health')).status).toBe(200)
    for (const pid of server) process.kill(pid, 'SIGSTOP')
    try {
      const from = performance.now()
      const answer = await ask('/health')
      expect(performance.now() - from).toBeLessThan(5_000)
      expect(answer).toMatchObject({ status: 503, text: expect.stringContaining('does not answer') })
    } finally {
      for (const pid of server) process.kill(pid, 'SIGCONT')
    }
    for (let tries = 0; (await ask('/health')).status !== 200; tries++) {
      expect(tries).toBeLessThan(40)
      await wait(500)
    }
  })

  test('answers 503 with a sentence while the disk has less room than is asked for', async () => {
    await stop()
    await start({ LIQUIDUS_MIN_FREE_MB: '1000000000' })
    const { status, text } = await ask('/health')
    expect(status).toBe(503)
    expect(JSON.parse(text)).toEqual({
      status: 'little room',
      message: expect.stringMatching(
        /has \d+ MB left; LIQUIDUS_MIN_FREE_MB asks for 1000000000\. Make room\.$/,
      ),
    })
  })
})
