import { rmSync } from 'node:fs'
import { createServer, type AddressInfo } from 'node:net'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { fullDisk, runAs, type ServerAccount } from '@/lib/db/embedded-account'
import type { EmbeddedBinaries } from '@/lib/db/embedded-binaries'
import { commandLineOf, isAlive } from '@/lib/settings/process-identity'
import { readIfThere } from '@/lib/settings/read-if-there'

const START_TRIES = 20
const RETRY_AFTER_MS = 500
const LONGEST_RECOVERY_S = 600
/** After this the server is cut off, which loses nothing that was acknowledged; it then recovers at the next start. */
const LONGEST_GOODBYE_S = 30

const markIn = (folder: string) => join(folder, 'postmaster.pid')

/** The process number that a running server keeps in its folder; 0 where there is none. */
export const runningServer = (folder: string) => Number(readIfThere(markIn(folder))?.split('\n')[0] ?? 0)

/** Ends what a killed app left running, and removes the mark of a server that is no more. */
export async function stopLeftBehind(
  folder: string,
  binaries: EmbeddedBinaries,
  account: ServerAccount | undefined,
): Promise<void> {
  const pid = runningServer(folder)
  if (!(pid > 0)) return
  const command = isAlive(pid) ? (commandLineOf(pid) ?? folder) : ''
  if (command.includes(folder)) await stopServer(folder, binaries, account)
  else rmSync(markIn(folder), { force: true })
}

/** Ends a server once its last transactions are on disk. Does nothing where none runs. */
export async function stopServer(
  folder: string,
  { pg_ctl }: EmbeddedBinaries,
  account: ServerAccount | undefined,
): Promise<void> {
  const stop = (mode: string) =>
    runAs(pg_ctl, ['stop', '-D', folder, '-w', '-t', String(LONGEST_GOODBYE_S), '-m', mode], {
      account,
      reaches: [folder],
    })
  if (runningServer(folder) === 0) return
  try {
    await stop('fast')
  } catch (error) {
    if (!isAlive(runningServer(folder))) return
    await stop('immediate').catch(() => {
      throw error
    })
  }
}

/**
 * Starts the server and returns its port once it answers.
 * Tries again where another program took the port in between, or the last processes of a killed server still end.
 */
export async function startOnFreePort(
  folder: string,
  { pg_ctl }: EmbeddedBinaries,
  account: ServerAccount | undefined,
  durable: boolean,
): Promise<number> {
  const startLog = join(folder, 'start.log')
  for (let tries = 1; ; tries++) {
    const port = await freePort()
    rmSync(startLog, { force: true })
    try {
      await runAs(
        pg_ctl,
        [
          'start',
          '-D',
          folder,
          '-w',
          '-t',
          String(LONGEST_RECOVERY_S),
          '-l',
          startLog,
          '-o',
          serverOptions(port, durable),
        ],
        { account, reaches: [folder] },
      )
      return port
    } catch (error) {
      const said = readIfThere(startLog) ?? ''
      if (said.includes('No space left on device')) throw fullDisk(error)
      const passes = /could not bind|still in use/.test(said)
      if (!passes || tries === START_TRIES) {
        throw new Error(
          `The database in ${folder} did not start. It said:\n${said.trim() || String(error)}`,
          { cause: error },
        )
      }
      await wait(RETRY_AFTER_MS)
    }
  }
}

function serverOptions(port: number, durable: boolean): string {
  const kept = durable ? 'on' : 'off'
  const options = {
    port,
    listen_addresses: '127.0.0.1',
    unix_socket_directories: '',
    max_connections: 100,
    timezone: 'UTC',
    fsync: kept,
    synchronous_commit: kept,
    full_page_writes: kept,
    logging_collector: 'on',
    log_directory: 'log',
    log_filename: 'postgresql-%a.log',
    log_truncate_on_rotation: 'on',
    log_rotation_age: '1d',
    log_rotation_size: 0,
    log_timezone: 'UTC',
  }
  return Object.entries(options)
    .map(([name, value]) => `-c ${name}=${value}`)
    .join(' ')
}

/** A port that nobody listens on at this moment. */
export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer()
    probe.once('error', reject)
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address() as AddressInfo
      probe.close(() => resolve(port))
    })
  })
}
