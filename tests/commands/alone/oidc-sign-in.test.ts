import { randomUUID } from 'node:crypto'
import { decode } from 'next-auth/jwt'
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest'
import { askNextAuth, cookiesIn, startProviderSignIn } from '@/lib/auth/provider-sign-in'
import { database } from '@/lib/db/client'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'
import { startIdentityProvider, type TestProvider } from '@/tests/setup/identity-provider'

const URL_HERE = 'http://127.0.0.1:3210'
const CALLBACK = `${URL_HERE}/api/auth/callback/oidc`
const SECRET = 'a secret of this test alone, long enough'

let db: FreshDatabase
let provider: TestProvider
beforeAll(async () => {
  db = await freshDatabase()
  provider = await startIdentityProvider({ id: 'liquidus', secret: SECRET, redirect: CALLBACK })
  Object.assign(process.env, {
    NEXTAUTH_URL: URL_HERE,
    NEXTAUTH_SECRET: SECRET,
    OIDC_ISSUER: provider.issuer,
    OIDC_CLIENT_ID: 'liquidus',
    OIDC_CLIENT_SECRET: SECRET,
  })
})
afterAll(async () => {
  await provider.close()
  await db.drop()
})

const addPerson = (name: string, passwordHash: string | null = null) =>
  database().person.create({
    data: {
      id: randomUUID(),
      email: `${name}@example.invalid`,
      name,
      passwordHash,
      createdAt: new Date('2026-03-02T08:00:00Z'),
    },
  })

const headers = { host: '127.0.0.1:3210' }

/** The whole way of a browser: our form, the provider's pages, our callback. */
async function signIn(as: string, then = '/programmes') {
  const started = await startProviderSignIn({ headers, cookies: {} }, then)
  const cookies = cookiesIn(started.setCookies)
  const back = await provider.signIn(started.location, as, CALLBACK)
  return { back, cookies, ...(await callBack(back, cookies)) }
}

async function callBack(back: URL, cookies: Record<string, string>) {
  const query = Object.fromEntries(back.searchParams)
  const answer = await askNextAuth({ method: 'GET', path: ['callback', 'oidc'], headers, cookies, query })
  const token = cookiesIn(answer.setCookies)['next-auth.session-token']
  return { location: answer.location, session: token ? await decode({ token, secret: SECRET }) : null }
}

describe('signing in at the identity provider', () => {
  test('a person added with that verified address and no password is let in, and bound to the identity', async () => {
    const ada = await addPerson('ada')
    const { location, session } = await signIn('ada')
    expect(location).toBe(`${URL_HERE}/programmes`)
    expect(session).toMatchObject({ personId: ada.id, credentialEpoch: 0 })
    const bound = await database().person.findUniqueOrThrow({ where: { id: ada.id } })
    expect(bound.identity).toBe(`${provider.issuer} ada`)
    const [entry] = await database().trailEntry.findMany({ where: { command: 'bind-identity' } })
    expect(entry).toMatchObject({ trailId: 'installation', actorId: ada.id, actorName: 'ada' })
    expect(JSON.parse(entry?.payload ?? '')).toMatchObject({ identity: bound.identity })
  })

  test('once bound, the identity counts, not the address', async () => {
    const bela = await addPerson('bela')
    await signIn('bela')
    const entries = () => database().trailEntry.count({ where: { actorId: bela.id } })
    expect(await entries()).toBe(1)
    await database().person.update({ where: { id: bela.id }, data: { email: 'other@example.invalid' } })
    expect((await signIn('bela')).session).toMatchObject({ personId: bela.id })
    expect(await entries()).toBe(1)
  })

  test('it always asks for a fresh sign-in, with PKCE, state and nonce', async () => {
    const { location } = await startProviderSignIn({ headers, cookies: {} }, '/')
    const asked = new URL(location).searchParams
    expect(location.startsWith(provider.issuer)).toBe(true)
    expect(asked.get('prompt')).toBe('login')
    expect(asked.get('max_age')).toBe('0')
    expect(asked.get('code_challenge_method')).toBe('S256')
    expect(asked.get('state')).toBeTruthy()
    expect(asked.get('nonce')).toBeTruthy()
  })

  test('one that the provider did not ask for, its session being open, is as old as that session', async () => {
    const gail = await addPerson('gail')
    const jar: Record<string, string> = {}
    const enter = async (change: (asked: URLSearchParams) => void) => {
      const started = await startProviderSignIn({ headers, cookies: {} }, '/')
      const location = new URL(started.location)
      change(location.searchParams)
      const back = await provider.signIn(location.href, 'gail', CALLBACK, jar)
      return (await callBack(back, cookiesIn(started.setCookies))).session
    }
    expect(await enter(() => undefined)).toMatchObject({ personId: gail.id })
    vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + 10 * 60_000 })
    try {
      const now = Math.floor(Date.now() / 1000)
      const again = await enter((asked) => {
        asked.set('prompt', 'none')
        asked.set('max_age', '100000')
      })
      expect(again).toMatchObject({ personId: gail.id })
      expect(now - Number(again?.['signedInAt'])).toBeGreaterThanOrEqual(10 * 60 - 5)
    } finally {
      vi.useRealTimers()
    }
  })

  test('what next-auth reports stands in our own log, one line of JSON', async () => {
    const written = vi.spyOn(process.stderr, 'write').mockReturnValue(true)
    await askNextAuth({
      method: 'GET',
      path: ['callback', 'oidc'],
      headers,
      cookies: {},
      query: { code: 'x' },
    })
    const lines = written.mock.calls.map(([line]) => JSON.parse(String(line)) as Record<string, unknown>)
    written.mockRestore()
    expect(lines).toContainEqual(expect.objectContaining({ level: 'error', code: 'OAUTH_CALLBACK_ERROR' }))
  })

  test('somebody nobody added is told so, and gets no session', async () => {
    const { location, session } = await signIn('stranger')
    expect(location).toContain('/sign-in?error=unknown-person')
    expect(session).toBeNull()
  })

  test('a person with a password is not taken over by an identity of the same address', async () => {
    const cleo = await addPerson('cleo', 'scrypt$of$no$matter')
    expect((await signIn('cleo')).session).toBeNull()
    expect((await database().person.findUniqueOrThrow({ where: { id: cleo.id } })).identity).toBeNull()
  })

  test('an address the provider has not verified binds nobody', async () => {
    await addPerson('unverified')
    expect((await signIn('unverified')).session).toBeNull()
  })

  test('a person whose access has ended is not let in, though bound', async () => {
    const dora = await addPerson('dora')
    await signIn('dora')
    await database().person.update({ where: { id: dora.id }, data: { disabledAt: new Date() } })
    expect((await signIn('dora')).session).toBeNull()
  })

  test('an answer of the provider is worth nothing in another browser, nor a second time', async () => {
    await addPerson('enno')
    const { back, cookies, session } = await signIn('enno')
    expect(session).not.toBeNull()
    expect((await callBack(back, {})).session).toBeNull()
    expect((await callBack(back, cookies)).session).toBeNull()
  })
})
