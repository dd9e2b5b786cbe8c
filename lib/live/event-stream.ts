/** How a page is told of news: text/event-stream (WHATWG HTML, section 9.2). */
const HEADERS = {
  'content-type': 'text/event-stream; charset=utf-8',
  // Compressing would gather the news until there is enough of it.
  'cache-control': 'no-store, no-transform',
  // A proxy that gathers answers would hold the news back.
  'x-accel-buffering': 'no',
}

const BEAT_MS = 20_000

/** So that an ended session hears no more: the browser asks again, and is let in again or not. */
const LONGEST_MS = 60_000

const TRY_AGAIN_MS = 2_000

/** An answer that stays open for a minute and sends an event whenever `begin` says so; `begin` returns how to stop. */
export function eventStream(signal: AbortSignal, begin: (send: () => void) => () => void): Response {
  const encoder = new TextEncoder()
  let end: () => void = () => undefined
  let isCancelled = false
  const body = new ReadableStream<Uint8Array>({
    start(controller) {
      let open = true
      const write = (text: string) => {
        if (open) controller.enqueue(encoder.encode(text))
      }
      write(`retry: ${TRY_AGAIN_MS}\n\n`)
      const stop = begin(() => write('data: changed\n\n'))
      const beat = setInterval(() => write(': still here\n\n'), BEAT_MS)
      const last = setTimeout(() => end(), LONGEST_MS)
      end = () => {
        end = () => undefined
        open = false
        clearInterval(beat)
        clearTimeout(last)
        stop()
        if (!isCancelled) controller.close()
      }
      signal.addEventListener('abort', () => end(), { once: true })
    },
    cancel() {
      isCancelled = true
      end()
    },
  })
  return new Response(body, { headers: HEADERS })
}
