/*
 * How long a route card takes, against the emptiest page that the same server
 * renders, 10 clients asking without a pause. Starts the app on a data folder of
 * its own, with the demo; LIQUIDUS_BENCH_URL names one that runs already instead.
 * Run: npx tsx tests/bench/route-card.bench.ts
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { freePort } from '@/lib/db/embedded-process'
import { DEMO_PASSWORD, DEMO_PEOPLE } from '@/seed/people'
import { runScript } from '@/tests/faults/programs'

const CLIENTS = 10
const ROUNDS = 4
const ROUND_MS = 4_000
const MOST_RATIO = 3
/** Rendered for each request as the route card is, but with nothing to look up. */
const EMPTY_PAGE = '/sign-in'
const ROUTE_CARD = '/programmes/LX-41'

/** The cookies of one signed-in person, as a `cookie` header. */
async function signIn(base: string): Promise<string> {
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

/** Milliseconds of each answer to clients who ask again as soon as they have one. */
async function timesOf(address: string, cookie: string, text: string): Promise<number[]> {
  const times: number[] = []
  const end = performance.now() + ROUND_MS
  const client = async () => {
    while (performance.now() < end) {
      const start = performance.now()
      const response = await fetch(address, { headers: { cookie }, redirect: 'manual' })
      const page = await response.text()
      times.push(performance.now() - start)
      if (response.status !== 200 || !page.includes(text))
        throw new Error(`${address} answered ${response.status}, without “${text}”.`)
    }
  }
  await Promise.all(Array.from({ length: CLIENTS }, client))
  return times
}

function percentile(times: readonly number[], share: number): number {
  const sorted = times.toSorted((one, other) => one - other)
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN
}

async function measure(base: string): Promise<void> {
  const cookie = await signIn(base)
  const empty: number[] = []
  const card: number[] = []
  // The first round warms both up; then in turn, so that a busy machine slows both alike.
  for (let round = 0; round <= ROUNDS; round++) {
    const emptyTimes = await timesOf(base + EMPTY_PAGE, cookie, 'Password')
    const cardTimes = await timesOf(base + ROUTE_CARD, cookie, 'Route card')
    if (round === 0) continue
    empty.push(...emptyTimes)
    card.push(...cardTimes)
  }
  for (const [name, times] of [
    ['empty page', empty],
    ['route card', card],
  ] as const)
    console.log(
      `${name}: p50 ${percentile(times, 0.5).toFixed(0)} ms, p95 ${percentile(times, 0.95).toFixed(0)} ms, ${times.length} answers`,
    )
  const ratio = percentile(card, 0.95) / percentile(empty, 0.95)
  console.log(
    `at p95 the route card takes ${ratio.toFixed(2)} times the empty page (wanted: ${MOST_RATIO} or less)`,
  )
  if (!(ratio <= MOST_RATIO)) process.exitCode = 1
}

/** Measures an app started for it alone, which is stopped and forgotten afterwards. */
async function measureOwn(): Promise<void> {
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

const base = process.env.LIQUIDUS_BENCH_URL?.replace(/\/+$/, '')
await (base ? measure(base) : measureOwn())
