/*
 * How long a route card takes, against the emptiest page that the same server
 * renders, 10 clients asking without a pause. Starts the app on a data folder of
 * its own, with the demo; LIQUIDUS_BENCH_URL names one that runs already instead.
 * Run: npx tsx tests/bench/route-card.bench.ts
 */
import { signIn, withRunningApp } from '@/tests/bench/running-app'

const CLIENTS = 10
const ROUNDS = 4
const ROUND_MS = 4_000
const MAX_RATIO = 3
/** Rendered for each request as the route card is, but with nothing to look up. */
const EMPTY_PAGE = '/sign-in'
const ROUTE_CARD = '/programmes/LX-41'

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
    `at p95 the route card takes ${ratio.toFixed(2)} times the empty page (wanted: ${MAX_RATIO} or less)`,
  )
  if (!(ratio <= MAX_RATIO)) process.exitCode = 1
}

await withRunningApp(measure)
