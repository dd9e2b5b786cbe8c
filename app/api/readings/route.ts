import { problem } from '@/app/api/problem'
import { guardedByToken } from '@/app/guard/guarded-by-token'
import { pushReadings } from '@/lib/machines/push-readings'
import { LARGEST_BODY_BYTES } from '@/lib/machines/push-schema'

/** Readings from a machine, by the token it was given. Described at /api/openapi. */
export const POST = guardedByToken(async (request, machine) => {
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
    : problem(pushed.status, pushed.message, { problems: pushed.problems })
})

/** The body as text; undefined as soon as it is found to be larger. */
async function textWithin(request: Request, maxBytes: number): Promise<string | undefined> {
  if (Number(request.headers.get('content-length')) > maxBytes) return undefined
  const chunks: Uint8Array[] = []
  let bytes = 0
  for await (const chunk of (request.body ?? []) as AsyncIterable<Uint8Array>) {
    bytes += chunk.length
    if (bytes > maxBytes) return undefined
    chunks.push(chunk)
  }
  return Buffer.concat(chunks).toString('utf8')
}
