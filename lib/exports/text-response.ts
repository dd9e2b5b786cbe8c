import { create } from 'content-disposition'

/** Text that is made while it is sent, as a file to save. */
export function fileResponse(pieces: AsyncIterable<string>, fileName: string, mediaType: string): Response {
  return new Response(streamOf(pieces), {
    headers: {
      'content-type': `${mediaType}; charset=utf-8`,
      'content-disposition': create(fileName),
      'cache-control': 'private, no-store',
      'x-content-type-options': 'nosniff',
    },
  })
}

/** Values as they come, one JSON text a line, for a page that follows some work. */
export const linesResponse = (values: AsyncIterable<unknown>): Response =>
  new Response(streamOf(jsonLines(values)), {
    headers: {
      'content-type': 'application/x-ndjson',
      'cache-control': 'private, no-store',
      'x-accel-buffering': 'no',
    },
  })

async function* jsonLines(values: AsyncIterable<unknown>): AsyncGenerator<string> {
  for await (const value of values) yield `${JSON.stringify(value)}\n`
}

/** The pieces as UTF-8, asked for only as fast as the reader takes them. */
export function streamOf(pieces: AsyncIterable<string>): ReadableStream<Uint8Array> {
  const encoder = new TextEncoder()
  const iterator = pieces[Symbol.asyncIterator]()
  return new ReadableStream({
    async pull(controller) {
      const { value, done } = await iterator.next()
      if (done) controller.close()
      else controller.enqueue(encoder.encode(value))
    },
    async cancel() {
      await iterator.return?.()
    },
  })
}
