import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import Provider from 'oidc-provider'
import { cookiesIn } from '@/lib/auth/provider-sign-in'

export interface TestProvider {
  readonly issuer: string
  /** Signs in there as a browser would, and answers the address it is sent back to. `jar` is the browser's cookies. */
  signIn(location: string, as: string, at: string, jar?: Record<string, string>): Promise<URL>
  close(): Promise<void>
}

/** An OpenID Connect provider on loopback that lets everybody in and has verified their address. */
export async function startIdentityProvider(client: {
  id: string
  secret: string
  redirect: string
}): Promise<TestProvider> {
  const server = createServer()
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const issuer = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  const provider = new Provider(issuer, {
    clients: [{ client_id: client.id, client_secret: client.secret, redirect_uris: [client.redirect] }],
    claims: { openid: ['sub'], email: ['email', 'email_verified'], profile: ['name'] },
    cookies: { keys: ['only for this test'] },
    findAccount: (_context: unknown, id: string) => ({
      accountId: id,
      claims: () => ({
        sub: id,
        email: `${id}@example.invalid`,
        email_verified: id !== 'unverified',
        name: id,
      }),
    }),
  })
  server.on('request', provider.callback())
  return {
    issuer,
    signIn: walk,
    close: () => new Promise((resolve) => (server.closeAllConnections(), server.close(() => resolve()))),
  }
}

/** Follows redirects and fills in the provider's forms until it sends the browser back to `at`. */
async function walk(
  location: string,
  as: string,
  at: string,
  jar: Record<string, string> = {},
): Promise<URL> {
  let next: { url: string; body?: URLSearchParams } = { url: location }
  for (let steps = 0; steps < 20; steps++) {
    if (next.url.startsWith(at)) return new URL(next.url)
    const response: Response = await fetch(next.url, {
      method: next.body ? 'POST' : 'GET',
      redirect: 'manual',
      headers: {
        cookie: Object.entries(jar)
          .map(([name, value]) => `${name}=${value}`)
          .join('; '),
      },
      ...(next.body ? { body: next.body } : {}),
    })
    Object.assign(jar, cookiesIn(response.headers.getSetCookie()))
    const to = response.headers.get('location')
    if (to) {
      next = { url: new URL(to, next.url).href }
      continue
    }
    const page = await response.text()
    const prompt = /name="prompt" value="(\w+)"/.exec(page)?.[1]
    const action = /<form[^>]* action="([^"]+)"/.exec(page)?.[1]
    if (!prompt || !action) throw new Error(`The provider answered ${response.status}: ${page.slice(0, 300)}`)
    next = {
      url: new URL(action, next.url).href,
      body: new URLSearchParams({ prompt, login: as, password: 'any' }),
    }
  }
  throw new Error('The provider did not send the browser back.')
}
