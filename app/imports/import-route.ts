import { whereItLeads } from '@/app/forms/submit'
import { text } from '@/app/forms/typed-text'
import { guarded } from '@/app/guard/guarded'
import type { ImportStep } from '@/app/imports/import-steps'
import { importerFor, type Importer, type ImportPlace } from '@/app/imports/importer'
import type { Prepare, TellProgress } from '@/app/imports/prepared'
import { performUnparsed } from '@/lib/commands/perform'
import { log } from '@/lib/log/log'
import type { NameWithoutSubject } from '@/shared/commands/all-faces'

const LARGEST_FORM_BYTES = 1024 * 1024

/** A route that runs a confirmed import and says how far it is, one JSON value a line. */
export const importRoute = <Params, Into>(place: ImportPlace<Params, Into>, prepare: Prepare<Into>) =>
  guarded<Params, Into>(place.rights, async ({ request, person, right: into }) => {
    if (!(Number(request.headers.get('content-length')) <= LARGEST_FORM_BYTES))
      return new Response('The form is too large.', { status: 413 })
    const form = await request.formData().catch(() => undefined)
    if (!form) return new Response('The form cannot be read.', { status: 400 })
    return runImport(place.command, form, importerFor(place, person, into), prepare)
  })

function runImport<Into>(
  command: NameWithoutSubject,
  form: FormData,
  importer: Importer<Into>,
  prepare: Prepare<Into>,
): Response {
  const encoder = new TextEncoder()
  const stream = new ReadableStream<Uint8Array>({
    async start(controller) {
      const say = (step: ImportStep) => controller.enqueue(encoder.encode(`${JSON.stringify(step)}\n`))
      try {
        say(await ended(command, form, importer, prepare, (read, of) => say({ read, of })))
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

async function ended<Into>(
  command: NameWithoutSubject,
  form: FormData,
  importer: Importer<Into>,
  prepare: Prepare<Into>,
  tell: TellProgress,
): Promise<ImportStep> {
  const prepared = await prepare(importer, form, tell)
  if ('message' in prepared) return { refused: prepared.message }
  const { personId } = importer.person
  const outcome = await performUnparsed(personId, command, prepared.input, { key: text(form, 'key') })
  return outcome.ok ? { address: whereItLeads(outcome, form) } : { refused: outcome.message }
}
