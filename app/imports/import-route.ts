import type { ImportStep } from '@/app/imports/import-steps'
import type { Prepared, TellProgress } from '@/app/imports/prepared'
import { isSameOrigin } from '@/app/same-origin'
import { signedIn } from '@/lib/auth/session'
import { perform } from '@/lib/commands/perform'
import { log } from '@/lib/log/log'

const LARGEST_FORM_BYTES = 1024 * 1024

/** Runs a confirmed import and says how far it is, one JSON value a line. */
export async function runImport(
  request: Request,
  prepare: (form: FormData, tell: TellProgress) => Promise<Prepared>,
): Promise<Response> {
  const person = await signedIn()
  const tooLarge = !(Number(request.headers.get('content-length')) <= LARGEST_FORM_BYTES)
  if (!person || !isSameOrigin(request) || tooLarge) return new Response(null, { status: person ? 403 : 401 })
  const form = await request.formData()
  const encoder = new TextEncoder()
  const stream = new ReadableStream<Uint8Array>({
    async start(controller) {
      const say = (step: ImportStep) => controller.enqueue(encoder.encode(`${JSON.stringify(step)}\n`))
      try {
        say(await ended(form, person.personId, prepare, (read, of) => say({ read, of })))
      } catch (error) {
        log.error('An import failed.', { error })
      }
      controller.close()
    },
  })
  return new Response(stream, {
    headers: {
      'content-type': 'application/x-ndjson',
      'cache-control': 'private, no-store',
      'x-accel-buffering': 'no',
    },
  })
}

async function ended(
  form: FormData,
  personId: string,
  prepare: (form: FormData, tell: TellProgress) => Promise<Prepared>,
  tell: TellProgress,
): Promise<ImportStep> {
  const prepared = await prepare(form, tell)
  if ('says' in prepared) return { refused: prepared.says }
  const { command, input, address } = prepared
  const outcome = await perform(personId, command, input, { key: String(form.get('key') ?? '') })
  return outcome.ok ? { address } : { refused: outcome.message }
}
