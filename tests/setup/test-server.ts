import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { startEmbeddedServer } from '@/lib/db/embedded-server'

export const MIGRATIONS = fileURLToPath(new URL('../../prisma/migrations', import.meta.url))

const LOOPBACK = new Set(['localhost', '127.0.0.1', '[::1]'])

export interface TestServer {
  /** A database to connect to in order to create others. */
  url: string
  stop(): Promise<void>
}

/**
 * The server that tests make their databases on: the one of TEST_DATABASE_URL, else a private one
 * whose files are thrown away at the end.
 */
export async function startTestServer(): Promise<TestServer> {
  const named = process.env.TEST_DATABASE_URL
  if (named) {
    refuseRemote(named)
    return { url: named, stop: () => Promise.resolve() }
  }
  const dataFolder = mkdtempSync(join(tmpdir(), 'liquidus-test-'))
  const server = await startEmbeddedServer(dataFolder, { durable: false })
  return {
    url: server.url,
    async stop() {
      await server.stop()
      rmSync(dataFolder, { recursive: true, force: true })
    },
  }
}

/** Tests create and drop databases: they must never do so on a machine that others use. */
export function refuseRemote(url: string): void {
  const { hostname } = new URL(url)
  if (LOOPBACK.has(hostname)) return
  throw new Error(
    `Tests would create and drop databases on ${hostname}. Point TEST_DATABASE_URL at localhost, or unset it.`,
  )
}

/** The same server, another database. */
export function withDatabase(url: string, name: string): string {
  const other = new URL(url)
  other.pathname = `/${name}`
  return other.href
}
