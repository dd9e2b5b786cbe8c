import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { freePort } from '@/lib/db/embedded-process'
import { DEMO_PASSWORD, DEMO_PEOPLE } from '@/seed/people'
import { runScript } from '@/tests/faults/programs'

/**
 * Hands the address of a running app with the demo to a measurement: the one named in LIQUIDUS_BENCH_URL, or one
 * started for it on a data folder of its own, which is stopped and forgotten afterwards.
 */
export async function withRunningApp(measure: (base: string) => Promise<void>): Promise<void> {
  const named = process.env.LIQUIDUS_BENCH_URL?.replace(/\/+$/, '')
  if (named) return measure(named)
  const dataFolder = mkdtempSync(join(tmpdir(), 'liquidus-bench-'))
  const port = String(await freePort())
  const app = runScript('scripts/start.ts', [], {
    DATABASE_URL: '',
    LIQUIDUS_DATA: dataFolder,
    LIQUIDUS_DEMO: 'on',
    PORT: port,
  })
  try {
    await app.line(/^Ready:/)
    await measure(`http://127.0.0.1:${port}`)
  } finally {
    app.process.kill('SIGTERM')
    await app.ended
    rmSync(dataFolder, { recursive: true, force: true })
  }
}

/** The cookies of one signed-in person, as a `cookie` header. */
export async function signIn(base: string): Promise<string> {
  const asked = await fetch(`${base}/api/auth/csrf`)
  const { csrfToken } = (await asked.json()) as { csrfToken: string }
  const before = cookiesOf(asked)
  const answer = await fetch(`${base}/api/auth/callback/credentials`, {
    method: 'POST',
    redirect: 'manual',
    headers: { cookie: before, 'content-type': 'application/x-www-form-urlencoded' },
    body: new URLSearchParams({ csrfToken, email: DEMO_PEOPLE.ines.email, password: DEMO_PASSWORD }),
  })
  const after = cookiesOf(answer)
  if (!after.includes('session-token'))
    throw new Error(`Nobody could sign in at ${base} (${answer.status}). Is the demo loaded there?`)
  return `${before}; ${after}`
}

const cookiesOf = (response: Response): string =>
  response.headers
    .getSetCookie()
    .map((cookie) => cookie.split(';')[0] ?? '')
    .join('; ')
