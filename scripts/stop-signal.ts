const LOOK_EVERY_MS = 250

/**
 * Aborted when the app is told to stop: by SIGINT or SIGTERM, or because npm, which started it, was
 * killed and can no longer pass a signal on.
 */
export function stopSignal(): AbortSignal {
  const stopping = new AbortController()
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => stopping.abort())
  if (process.env.npm_lifecycle_event) {
    const npm = process.ppid
    setInterval(() => {
      if (process.ppid !== npm) stopping.abort()
    }, LOOK_EVERY_MS).unref()
  }
  return stopping.signal
}
