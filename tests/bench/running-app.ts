import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { freePort } from '@/lib/db/embedded-process'
import { DEMO_PASSWORD, DEMO_PEOPLE } from '@/seed/people'
import { signedInAt } from '@/tests/faults/plain-browser'
import { runScript } from '@/tests/faults/programs'

/**
 * Hands the address of a running app with the demo to a measurement: the one named in LIQUIDUS_BENCH_URL, or one
 * started for it on a data folder of its own, which is stopped and forgotten afterwards.
 */
export async function withRunningApp(measure: (base: string) => Promise<void>): Promise<void> {
  const named = process.env.LIQUIDUS_BENCH_URL?.replace(/\/+$/, '')
  if (named) return measure(named)
  const dataFolder = mkdtempSync(join(tmpdir(), 'liquidus-bench-'))
  try {
    await withAppOn(dataFolder, 'on', measure)
  } finally {
    rmSync(dataFolder, { recursive: true, force: true })
  }
}

/** The same on a data folder that may hold something already. */
export async function withAppOn(
  dataFolder: string,
  demo: 'on' | 'off',
  measure: (base: string) => Promise<void>,
): Promise<void> {
  const port = String(await freePort())
  const app = runScript('scripts/start.ts', [], {
    DATABASE_URL: '',
    LIQUIDUS_DATA: dataFolder,
    LIQUIDUS_DEMO: demo,
    PORT: port,
  })
  try {
    await app.line(/^Ready:/)
    await measure(`http://127.0.0.1:${port}`)
  } finally {
    app.process.kill('SIGTERM')
    await app.ended
  }
}

/** The cookies of one signed-in person of the demo, as a `cookie` header. */
export const signIn = (base: string): Promise<string> =>
  signedInAt(base, { email: DEMO_PEOPLE.ines.email, password: DEMO_PASSWORD })
