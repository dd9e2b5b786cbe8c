import { chmodSync, chownSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { runAs, serverAccount } from '@/lib/db/embedded-account'
import { startOnFreePort, stopServer } from '@/lib/db/embedded-process'
import type { TestServer } from '@/tests/setup/test-server'

/** Where Debian and its kin keep the programs of each version they have installed. */
const INSTALLED = '/usr/lib/postgresql'
const OLDEST_VERSION = 15

/** The oldest PostgreSQL of the operating system that Liquidus supports: the one least like the embedded. */
export function systemPostgres(): { version: number; programs: string } | undefined {
  if (!existsSync(INSTALLED)) return undefined
  const versions = readdirSync(INSTALLED)
    .map(Number)
    .filter((version) => version >= OLDEST_VERSION)
  const version = versions.sort((one, other) => one - other)[0]
  const programs = join(INSTALLED, String(version), 'bin')
  return version !== undefined && existsSync(join(programs, 'initdb')) ? { version, programs } : undefined
}

/** Starts it on files of its own in a temporary folder, durable as in service; they are thrown away at the end. */
export async function startSystemServer(programs: string): Promise<TestServer> {
  const account = serverAccount()
  const above = mkdtempSync(join(tmpdir(), 'liquidus-system-'))
  chmodSync(above, 0o711)
  const folder = join(above, 'postgres')
  mkdirSync(folder, { mode: 0o700 })
  if (account) chownSync(folder, account.uid, account.gid)
  const [postgres, initdb, pg_ctl] = ['postgres', 'initdb', 'pg_ctl'].map((name) => join(programs, name)) as [
    string,
    string,
    string,
  ]
  const options = ['-D', folder, '--username=liquidus', '--auth=trust', '--encoding=UTF8', '--locale=C']
  await runAs(initdb, options, { account, reaches: [folder] })
  const binaries = { postgres, initdb, pg_ctl }
  const port = await startOnFreePort(folder, binaries, account, true)
  return {
    url: `postgresql://liquidus@127.0.0.1:${port}/postgres`,
    async stop() {
      await stopServer(folder, binaries, account)
      rmSync(above, { recursive: true, force: true })
    },
  }
}
