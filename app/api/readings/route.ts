import { callRate } from '@/lib/machines/call-rate'
import { tokenHashFrom } from '@/lib/machines/machine-token'
import { pushReadings } from '@/lib/machines/push-readings'
import { LARGEST_BODY_BYTES } from '@/lib/machines/push-schema'
import { machineBehind } from '@/lib/queries/machine-tokens'

const waitOf = callRate(Date.now)

/** Readings from a machine, by the token it was given. Described at /api/openapi. */
export async function POST(request: Request): Promise<Response> {
  const tokenHash = tokenHashFrom(request.headers.get('authorization'))
  if (!tokenHash) return unknownToken()
  const wait = waitOf(tokenHash)
  if (wait > 0)
    return problem(429, `Too many calls: wait ${wait} seconds.`, { headers: { 'retry-after': String(wait) } })
  const machine = await machineBehind(tokenHash)
  if (!machine) return unknownToken()
  if (!/^application\/json\b/i.test(request.headers.get('content-type') ?? ''))
    return problem(415, 'Send JSON, with the content type application/json.')
  const key = request.headers.get('idempotency-key')
  if (key !== null && !(key.length >= 1 && key.length <= 200))
    return problem(400, 'The Idempotency-Key has 1 to 200 characters.')
  const body = await textWithin(request, LARGEST_BODY_BYTES)
  if (body === undefined)
    return problem(413, `A call has at most ${LARGEST_BODY_BYTES / 1024} KiB: send several.`)
  const pushed = await pushReadings(machine, body, key)
  return 'stored' in pushed
    ? Response.json(pushed.stored)
    : problem(pushed.status, pushed.says, { problems: pushed.problems })
}

const TITLES: Readonly<Record<number, string>> = {
  400: 'The call cannot be read',
  401: 'Not let in',
  404: 'No such log',
  409: 'Refused',
  413: 'Too large',
  415: 'Not JSON',
  429: 'Too many calls',
}

/** A refusal in the form of RFC 9457. */
function problem(
  status: number,
  detail: string,
  more: { problems?: Readonly<Record<string, string>> | undefined; headers?: Record<string, string> } = {},
): Response {
  const { problems, headers } = more
  return Response.json(
    { title: TITLES[status], status, detail, ...(problems && { problems }) },
    { status, headers: { 'content-type': 'application/problem+json', ...headers } },
  )
}

const unknownToken = (): Response =>
  problem(401, 'The token is missing, unknown or stopped.', { headers: { 'www-authenticate': 'Bearer' } })

/** The body as text; undefined as soon as it is found to be larger. */
async function textWithin(request: Request, mostBytes: number): Promise<string | undefined> {
  if (Number(request.headers.get('content-length')) > mostBytes) return undefined
  const chunks: Uint8Array[] = []
  let bytes = 0
  for await (const chunk of (request.body ?? []) as AsyncIterable<Uint8Array>) {
    bytes += chunk.length
    if (bytes > mostBytes) return undefined
    chunks.push(chunk)
  }
  return Buffer.concat(chunks).toString('utf8')
}
