import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { cookiesIn } from '@/lib/auth/provider-sign-in'
import { freePort } from '@/lib/db/embedded-process'
import { runScript, type Program } from '@/tests/faults/programs'

const ADMINISTRATOR = 'administrator@localhost'

type Cookies = Record<string, string>
const headerOf = (cookies: Cookies) =>
  Object.entries(cookies)
    .map(([name, value]) => `${name}=${encodeURIComponent(value)}`)
    .join('; ')

/** The app as its users start it, and what a browser or a program asks of it. */
async function startApp(env: Record<string, string> = {}) {
  const dataFolder = mkdtempSync(join(tmpdir(), 'liquidus-sign-in-'))
  const port = await freePort()
  const settings = { LIQUIDUS_DATA: dataFolder, PORT: String(port), LIQUIDUS_DEMO: 'off', ...env }
  const program: Program = runScript('scripts/start.ts', [], settings)
  await program.line(/^Ready:/)
  const base = `http://127.0.0.1:${port}`
  const [, password = ''] = / {2}administrator@localhost {2}(\S+)/.exec(program.printed()) ?? []

  const ask = (path: string, cookies: Cookies, body?: BodyInit) =>
    fetch(`${base}${path}`, {
      redirect: 'manual',
      headers: { cookie: headerOf(cookies) },
      ...(body ? { method: 'POST', body } : {}),
    })
  const csrf = async () => {
    const asked = await fetch(`${base}/api/auth/csrf`)
    const { csrfToken } = (await asked.json()) as { csrfToken: string }
    return { csrfToken, cookies: cookiesIn(asked.headers.getSetCookie()) }
  }
  const send = ({ csrfToken, cookies }: Awaited<ReturnType<typeof csrf>>, typed: object, passedBy?: string) =>
    fetch(`${base}/api/auth/callback/credentials`, {
      method: 'POST',
      redirect: 'manual',
      headers: { cookie: headerOf(cookies), ...(passedBy ? { 'x-forwarded-for': passedBy } : {}) },
      body: new URLSearchParams({ csrfToken, json: 'true', ...typed }),
    })
  return {
    program,
    ask,
    csrf,
    send,
    /** The cookies of a new session of the administrator. */
    async signIn(): Promise<Cookies> {
      const answer = await send(await csrf(), { email: ADMINISTRATOR, password })
      return cookiesIn(answer.headers.getSetCookie())
    },
    async stop() {
      program.process.kill('SIGTERM')
      await program.ended
      rmSync(dataFolder, { recursive: true, force: true })
    },
  }
}
/** What a browser without scripts would send of a form: the fields by which the framework knows its action. */
function formIn(page: string, mark: string): FormData {
  const [form = ''] = new RegExp(`<form[^>]*${mark}[\\s\\S]*?</form>`).exec(page) ?? []
  const sent = new FormData()
  for (const [input] of form.matchAll(/<input type="hidden"[^>]*>/g)) {
    const [, name = ''] = /name="([^"]*)"/.exec(input) ?? []
    const [, value = ''] = /value="([^"]*)"/.exec(input) ?? []
    sent.append(name, value.replaceAll('&quot;', '"').replaceAll('&amp;', '&'))
  }
  return sent
}

type App = Awaited<ReturnType<typeof startApp>>

/** Whether a page of one's own is shown, and not the way to the sign-in. */
const isSignedIn = async (app: App, cookies: Cookies) => (await app.ask('/password', cookies)).status === 200

describe('the app as it comes', () => {
  let app: App
  beforeAll(async () => {
    app = await startApp()
  })
  afterAll(() => app.stop())

  test('signing out ends the session on the server: a copied cookie is worth nothing', async () => {
    const [copied, other] = [await app.signIn(), await app.signIn()]
    expect(await isSignedIn(app, copied)).toBe(true)
    const form = formIn(await (await app.ask('/password', copied)).text(), 'class="person-corner"')
    const left = await app.ask('/password', copied, form)
    expect(left.headers.get('location')).toContain('/sign-in')
    expect(await isSignedIn(app, copied)).toBe(false)
    expect(await isSignedIn(app, other)).toBe(true)
    expect(app.program.printed()).toContain('"event":"sign-out"')
  })

  test('so does signing out by its other way, after which no new cookie is made of the old', async () => {
    const copied = await app.signIn()
    const { csrfToken, cookies } = await app.csrf()
    await app.ask('/api/auth/signout', { ...copied, ...cookies }, new URLSearchParams({ csrfToken }))
    expect(await isSignedIn(app, copied)).toBe(false)
    const renewed = await app.ask('/api/auth/session', copied)
    expect(await isSignedIn(app, { ...copied, ...cookiesIn(renewed.headers.getSetCookie()) })).toBe(false)
  })

  test('the page says so too, of what is not right and of what finds no place', async () => {
    const page = await (await app.ask('/sign-in', {})).text()
    const answers = await Promise.all(
      Array.from({ length: 12 }, async (_, index) => {
        const form = formIn(page, 'aria-label="Sign in here"')
        form.append('email', `page-${index}@test.invalid`)
        form.append('password', 'wrong')
        return (await app.ask('/sign-in', {}, form)).text()
      }),
    )
    const saying = (sentence: string) => answers.filter((answer) => answer.includes(sentence))
    expect(saying('The address or the password is not right.')).toHaveLength(10)
    expect(saying('Try again in 5 seconds.')).toHaveLength(2)
  })

  test('a flood is answered at once by 429, whatever addresses it says it comes from', async () => {
    const form = await app.csrf()
    const began = performance.now()
    const answers = await Promise.all(
      Array.from({ length: 60 }, (_, index) =>
        app.send(form, { email: `flood-${index}@test.invalid`, password: 'wrong' }, `198.18.0.${index}`),
      ),
    )
    const told = answers.map(({ status }) => status)
    expect(told.filter((status) => status === 401)).toHaveLength(10)
    const refused = answers.filter(({ status }) => status === 429)
    expect(refused).toHaveLength(50)
    for (const answer of refused) expect(Number(answer.headers.get('retry-after'))).toBeGreaterThan(0)
    expect(await refused[0]?.json()).toEqual({ message: expect.stringContaining('Try again in 5 seconds.') })
    expect(performance.now() - began).toBeLessThan(55_000)
    expect(app.program.printed()).toContain('LIQUIDUS_TRUSTED_PROXIES')
    expect(app.program.printed()).toContain('"from":"127.0.0.1"')
  })
})

describe('with one proxy that is trusted', () => {
  let app: App
  beforeAll(async () => {
    app = await startApp({ LIQUIDUS_TRUSTED_PROXIES: '1' })
  })
  afterAll(() => app.stop())

  test('what the proxy says is the origin, and what stands before it is not', async () => {
    const form = await app.csrf()
    await app.send(form, { email: 'nobody@test.invalid', password: 'wrong' }, '192.0.2.66, 203.0.113.9')
    await app.program.line(/"event":"sign-in-refused".*"from":"203.0.113.9"/)
    expect(app.program.printed()).not.toContain('192.0.2.66')
  })
})
