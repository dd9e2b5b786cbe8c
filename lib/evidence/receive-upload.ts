import { Readable, Transform } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import type { ReadableStream as NodeWebStream } from 'node:stream/web'
import { Busboy, type BusboyFileStream, type BusboyInstance } from '@fastify/busboy'
import { Refused } from '@/shared/refused'
import { LARGEST_FILE_BYTES, type EvidenceStore, type StoredContent } from './store'

export type UploadLimits = {
  readonly files: number
  readonly fields: number
  readonly fieldBytes: number
  readonly fileBytes: number
  /** Of the whole request. */
  readonly totalBytes: number
}

export const UPLOAD_LIMITS: UploadLimits = {
  files: 10,
  fields: 50,
  fieldBytes: 100 * 1024,
  fileBytes: LARGEST_FILE_BYTES,
  totalBytes: 4 * LARGEST_FILE_BYTES,
}

/** One file of an upload, stored; `field` is the form field it came in. */
export type UploadedFile = StoredContent & { readonly field: string; readonly fileName: string }

export type Upload = {
  /** Values by field, in the order in which they came. */
  readonly fields: ReadonlyMap<string, readonly string[]>
  readonly files: readonly UploadedFile[]
}

/**
 * Reads a form with files (`multipart/form-data`) as it arrives; files go to the store piece by
 * piece and are never held whole in memory. The first thing that is wrong ends it with a refusal.
 * Files stored before that stay unnamed by any record, and a sweep removes them.
 */
export async function receiveUpload(
  request: Request,
  store: EvidenceStore,
  given: Partial<UploadLimits> = {},
  /** Filled as the form arrives, so that what was typed outlives a refusal of the file. */
  fields = new Map<string, string[]>(),
): Promise<Upload> {
  const limits = { ...UPLOAD_LIMITS, ...given }
  const body = bodyOf(request, limits)
  const arrivals: Promise<UploadedFile>[] = []
  const open = new Set<BusboyFileStream>()
  const stop = new AbortController()
  let firstCause: unknown
  const end = (cause: unknown) => {
    firstCause ??= cause
    stop.abort()
  }
  const refuse = (sentence: string) => end(new Refused(sentence))

  const form = formParser(request, limits)
  form.on('error', (error) => end(asRefusal(error)))
  form.on('field', (name, value, nameCut, valueCut) => {
    if (nameCut || valueCut) return refuse(`The field "${name}" is longer than ${limits.fieldBytes} bytes.`)
    fields.set(name, [...(fields.get(name) ?? []), value])
  })
  form.on('file', (field, stream, fileName) => {
    // The store leaves a stream that it refuses with an abort; what else goes wrong is on the sender's side.
    stream.on('error', (error) => error.name !== 'AbortError' && end(asRefusal(error)))
    // A file field left empty is sent as a file without a name.
    if (!fileName) return void stream.resume()
    open.add(stream)
    const arrival = store
      .put(stream, { maxBytes: limits.fileBytes, fileName })
      .then((content) => ({ ...content, field, fileName }))
    arrivals.push(arrival)
    arrival.catch(end).finally(() => open.delete(stream))
  })
  form.on('filesLimit', () =>
    refuse(`More than ${limits.files} files came at once. Send them in several goes.`),
  )
  form.on('fieldsLimit', () => refuse(`The form has more than ${limits.fields} fields.`))
  form.on('partsLimit', () => refuse('The form has too many parts.'))

  try {
    await pipeline(body, counting(limits.totalBytes), form, { signal: stop.signal })
    return { fields, files: await Promise.all(arrivals) }
  } catch (error) {
    end(asRefusal(error))
    for (const stream of open) stream.destroy(new Error('The upload ended early.'))
    await Promise.allSettled(arrivals)
    throw firstCause
  }
}

/** What ends the sender's stream is told to the sender; a refusal of ours stays what it is. */
const asRefusal = (error: unknown): Refused =>
  error instanceof Refused
    ? error
    : new Refused('The upload broke off before it was complete. Send it again.')

function bodyOf(request: Request, limits: UploadLimits): Readable {
  if (!request.body) throw new Refused('The request has no content.')
  if (Number(request.headers.get('content-length')) > limits.totalBytes) throw tooLarge(limits.totalBytes)
  return Readable.fromWeb(request.body as NodeWebStream<Uint8Array>)
}

function formParser(request: Request, limits: UploadLimits): BusboyInstance {
  const contentType = request.headers.get('content-type') ?? ''
  if (!/^multipart\/form-data\b/i.test(contentType))
    throw new Refused('A file is sent as a form (multipart/form-data).')
  try {
    return new Busboy({
      headers: { 'content-type': contentType },
      limits: {
        files: limits.files,
        fields: limits.fields,
        fieldSize: limits.fieldBytes,
        parts: limits.files + limits.fields + 1,
        headerPairs: 20,
        headerSize: 16 * 1024,
      },
    })
  } catch {
    throw new Refused('The form does not say where its parts end (no boundary).')
  }
}

function counting(maxBytes: number): Transform {
  let bytes = 0
  return new Transform({
    transform(chunk: Uint8Array, _encoding, done) {
      bytes += chunk.length
      if (bytes > maxBytes) done(tooLarge(maxBytes))
      else done(null, chunk)
    },
  })
}

const tooLarge = (maxBytes: number): Refused =>
  new Refused(
    `The upload is larger than ${Math.floor(maxBytes / (1024 * 1024))} MiB altogether. Send fewer files at once.`,
  )
