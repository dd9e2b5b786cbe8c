import { Server, type IncomingMessage, type ServerResponse } from 'node:http'

/** What a request must be for the framework to be asked at all. */
export interface AskedOf {
  readonly method?: string | undefined
  readonly url?: string | undefined
  readonly headers: IncomingMessage['headers']
}

/** Why a request is answered before the framework sees it. */
export interface NotTaken {
  readonly status: 400 | 403 | 405
  readonly message: string
}

const TAKEN_METHODS = ['GET', 'HEAD', 'POST', 'OPTIONS']

/**
 * What the framework would answer with 500 and a stack in the log, or hand on in a form that no page expects,
 * is the caller's mistake and is told as such: a method that nothing here takes, an address that is no UTF-8,
 * a question asked twice in it, a form from another site. Undefined for every other request.
 *
 * Sources: RFC 9110, sections 9.3.8 and 15.5; RFC 3986, section 2.5; RFC 6454, section 7.
 */
export function whyNotTaken({ method = 'GET', url = '/', headers }: AskedOf): NotTaken | undefined {
  if (!TAKEN_METHODS.includes(method))
    return { status: 405, message: `Nothing here takes ${method}; ask with ${TAKEN_METHODS.join(', ')}.` }
  if (!isDecodable(url))
    return { status: 400, message: 'The address holds a percent sign that stands for no letter.' }
  const twice = askedTwice(url)
  if (twice !== undefined)
    return { status: 400, message: `The address says ${JSON.stringify(twice)} more than once.` }
  return method === 'POST' && !url.startsWith('/api/') && isForeign(headers)
    ? { status: 403, message: 'The form came from another site.' }
    : undefined
}

function isDecodable(url: string): boolean {
  try {
    decodeURIComponent(url)
    return true
  } catch {
    return false
  }
}

function askedTwice(url: string): string | undefined {
  const at = url.indexOf('?')
  if (at < 0) return undefined
  const names = [...new URLSearchParams(url.slice(at)).keys()]
  return names.find((name, index) => names.indexOf(name) !== index)
}

/** A browser names the site of a form in its `origin`; behind a proxy, this one's name is the one passed on. */
function isForeign({ origin, host, 'x-forwarded-host': passedOn }: AskedOf['headers']): boolean {
  if (origin === undefined) return false
  const own = [host, [passedOn].flat()[0]?.split(',')[0]?.trim()]
  return !URL.canParse(origin) || !own.includes(new URL(origin).host)
}

/** From now on every server of this process answers such a request itself. The framework offers no place before its own. */
export function answerOddRequests(): void {
  const emit = Server.prototype.emit
  Server.prototype.emit = function (this: Server, event: string | symbol, ...given: unknown[]): boolean {
    if (event === 'request') {
      const [request, response] = given as [IncomingMessage, ServerResponse]
      const not = whyNotTaken(request)
      if (not) return answer(response, not)
    }
    return Reflect.apply(emit, this, [event, ...given]) as boolean
  }
}

function answer(response: ServerResponse, { status, message }: NotTaken): true {
  response.writeHead(status, {
    'Content-Type': 'text/plain; charset=utf-8',
    'X-Content-Type-Options': 'nosniff',
    'Cache-Control': 'no-store',
    ...(status === 405 && { Allow: TAKEN_METHODS.join(', ') }),
  })
  response.end(`${message}\n`)
  return true
}
