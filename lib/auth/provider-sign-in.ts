import NextAuth from 'next-auth'
import { authOptions } from '@/lib/auth/auth-options'
import { visitorFrom } from '@/lib/auth/visitor'

/** What next-auth's handler is called with and answers through, outside its own router. */
interface Call {
  readonly method: 'GET' | 'POST'
  readonly path: readonly string[]
  readonly headers: Readonly<Record<string, string>>
  readonly cookies: Readonly<Record<string, string>>
  readonly query?: Readonly<Record<string, string>>
  readonly body?: Readonly<Record<string, string>>
}
interface Answer {
  readonly status: number
  readonly location: string | undefined
  readonly setCookies: readonly string[]
  readonly body: unknown
}

/**
 * Starts a sign-in at the identity provider: where to send the browser, and the
 * cookies to send along. next-auth's page does this with a script, in two steps;
 * here its handler is asked for both, so that a plain form is enough.
 */
export async function startProviderSignIn(
  browser: Pick<Call, 'headers' | 'cookies'>,
  then: string,
): Promise<{ location: string; setCookies: readonly string[] }> {
  const opened = await askNextAuth({ ...browser, method: 'GET', path: ['csrf'] })
  const { csrfToken } = opened.body as { csrfToken: string }
  const started = await askNextAuth({
    ...browser,
    cookies: { ...browser.cookies, ...cookiesIn(opened.setCookies) },
    method: 'POST',
    path: ['signin', 'oidc'],
    body: { csrfToken, callbackUrl: then },
  })
  if (!started.location) throw new Error(`next-auth began no sign-in; it answered ${started.status}.`)
  return { location: started.location, setCookies: [...opened.setCookies, ...started.setCookies] }
}

/** Asks next-auth's handler as its router would. */
export async function askNextAuth(call: Call): Promise<Answer> {
  const { request, response, answer } = recorder(call)
  const visitor = visitorFrom(new Headers(call.headers))
  await (NextAuth as unknown as Handler)(request, response, authOptions(visitor))
  return answer()
}

type Handler = (request: object, response: object, options: ReturnType<typeof authOptions>) => Promise<void>

/** A request and a response as plain objects: the handler reads and calls no more of them than this. */
function recorder({ method, path, headers, cookies, query = {}, body }: Call) {
  const set = new Map<string, string | string[]>()
  let status = 200
  let sent: unknown
  const response = {
    status(code: number) {
      status = code
      return response
    },
    getHeader: (name: string) => set.get(name.toLowerCase()),
    setHeader(name: string, value: string | string[]) {
      set.set(name.toLowerCase(), value)
      return response
    },
    send: (what: unknown) => void (sent = what),
    json: (what: unknown) => void (sent = what),
    end: () => undefined,
  }
  const answer = (): Answer => ({
    status,
    location: set.get('location')?.toString(),
    setCookies: [set.get('set-cookie') ?? []].flat(),
    body: sent,
  })
  return {
    request: { method, headers, cookies, query: { ...query, nextauth: path }, body },
    response,
    answer,
  }
}

/** The names and values that a browser would keep. */
export const cookiesIn = (setCookies: readonly string[]): Record<string, string> =>
  Object.fromEntries(
    setCookies.map((line) => {
      const [pair = ''] = line.split(';')
      const cut = pair.indexOf('=')
      return [pair.slice(0, cut), decodeURIComponent(pair.slice(cut + 1))]
    }),
  )
