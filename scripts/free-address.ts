import { createServer } from 'node:net'
import { StartRefused } from '@/lib/settings/start-refused'

/** Throws StartRefused, with what to do, when the app could not listen there. */
export async function refuseTakenAddress(host: string, port: number): Promise<void> {
  const code = await tryToListen(host, port)
  if (code === undefined) return
  throw new StartRefused(
    SENTENCES[code]?.(host, port) ?? `Liquidus cannot listen on ${host}, port ${port} (${code}).`,
  )
}

const SENTENCES: Record<string, (host: string, port: number) => string> = {
  EADDRINUSE: (host, port) =>
    `Port ${port} on ${host} is in use by another program. Stop that program, or choose another port: PORT=${port + 1} npm start.`,
  EACCES: (_, port) =>
    `This user may not listen on port ${port}. Choose one above 1023, for example PORT=3000, and let a reverse proxy serve ${port}.`,
  EADDRNOTAVAIL: (host) =>
    `HOST is ${host}, which is not an address of this machine. Use 127.0.0.1 for this machine alone, or 0.0.0.0 for its network.`,
  ENOTFOUND: (host) =>
    `HOST is ${host}, which leads to no address. Use 127.0.0.1, or 0.0.0.0 for the whole network.`,
}

function tryToListen(host: string, port: number): Promise<string | undefined> {
  return new Promise((resolve) => {
    const probe = createServer()
    probe.once('error', (error: NodeJS.ErrnoException) => resolve(error.code ?? error.message))
    probe.listen(port, host, () => probe.close(() => resolve(undefined)))
  })
}
