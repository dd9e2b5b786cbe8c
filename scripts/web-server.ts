import { spawn, type ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { setTimeout as wait } from 'node:timers/promises'
import type { Settings } from '@/lib/settings/settings'
import { PROJECT_ROOT } from '@/scripts/project-root'
import { NEXT } from '@/scripts/run-program'

const LONGEST_GOODBYE_MS = 10_000
const ASK_EVERY_MS = 50

export interface WebServer {
  /** Resolves with how it ended, whoever ended it. */
  ended: Promise<string>
  /** Lets open requests finish, then ends it. */
  stop(): Promise<void>
}

/**
 * Starts the framework's own server as a program of its own, out of reach of the terminal's Ctrl+C (so that
 * it can be ended before the database), and waits until it answers.
 */
export async function startWebServer(
  mode: 'start' | 'dev',
  { host, port }: Settings,
  env: Record<string, string>,
  signal: AbortSignal,
): Promise<WebServer> {
  const preload = new URL('leave-with-parent.mjs', import.meta.url).href
  const child = spawn(
    process.execPath,
    ['--import', preload, NEXT, mode, '--hostname', host, '--port', String(port)],
    {
      cwd: PROJECT_ROOT,
      env: {
        ...process.env,
        ...env,
        LIQUIDUS_STARTED_BY: String(process.pid),
        NEXT_TELEMETRY_DISABLED: '1',
        NODE_ENV: mode === 'dev' ? 'development' : 'production',
      },
      stdio: ['ignore', 'pipe', 'inherit', 'ipc'],
      detached: process.platform !== 'win32',
    },
  )
  const ended = once(child, 'close').then(([code, ending]) => String(code ?? ending))
  const banner = heldBack(child)
  try {
    await answers(reachable(host, port), ended, signal)
  } catch (error) {
    await stop(child, ended)
    throw signal.aborted
      ? error
      : new Error(`${(error as Error).message}\n${banner.text()}`, { cause: error })
  }
  banner.letThrough()
  return { ended, stop: () => stop(child, ended) }
}

async function stop(child: ChildProcess, ended: Promise<string>): Promise<void> {
  child.kill('SIGTERM')
  const tooLong = new AbortController()
  const kill = wait(LONGEST_GOODBYE_MS, undefined, { signal: tooLong.signal }).then(
    () => child.kill('SIGKILL'),
    () => undefined,
  )
  await ended
  tooLong.abort()
  await kill
}

/** Keeps the framework's greeting back; the start says the address itself. */
function heldBack(child: ChildProcess): { text: () => string; letThrough: () => void } {
  let held = ''
  let through = false
  child.stdout?.on('data', (text) => {
    if (through) process.stdout.write(text as Buffer)
    else held += String(text)
  })
  return {
    text: () => held.trim(),
    letThrough: () => {
      through = true
    },
  }
}

function reachable(host: string, port: number): string {
  const everyCard: Record<string, string> = { '0.0.0.0': '127.0.0.1', '::': '::1' }
  const name = everyCard[host] ?? host
  return `http://${name.includes(':') ? `[${name}]` : name}:${port}/`
}

/** Any answer will do: it has started, and the first person's page is already compiled. */
async function answers(address: string, ended: Promise<string>, signal: AbortSignal): Promise<void> {
  let end: string | undefined
  void ended.then((how) => (end = how))
  for (;;) {
    signal.throwIfAborted()
    if (end !== undefined) throw new Error(`The web server ended (${end}) before it answered.`)
    try {
      await fetch(address, { redirect: 'manual', signal })
      return
    } catch {
      await wait(ASK_EVERY_MS)
    }
  }
}
