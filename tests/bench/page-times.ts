const CLIENTS = 10
const ROUNDS = 4
const ROUND_MS = 4_000
/** Rendered for each request as any page is, but with nothing to look up. */
const EMPTY_PAGE = '/sign-in'

interface PageMeasured {
  readonly base: string
  readonly cookie: string
  readonly path: string
  readonly name: string
  /** Something that the page says. */
  readonly text: string
}

/**
 * How many times the 95th percentile of an empty page of the same server a page takes, 10 clients asking without a
 * pause; prints both.
 */
export async function timesEmptyPage({ base, cookie, path, name, text }: PageMeasured): Promise<number> {
  const empty: number[] = []
  const page: number[] = []
  // The first round warms both up; then in turn, so that a busy machine slows both alike.
  for (let round = 0; round <= ROUNDS; round++) {
    const emptyTimes = await timesOf(base + EMPTY_PAGE, cookie, 'Password')
    const pageTimes = await timesOf(base + path, cookie, text)
    if (round === 0) continue
    empty.push(...emptyTimes)
    page.push(...pageTimes)
  }
  for (const [what, times] of [
    ['empty page', empty],
    [name, page],
  ] as const)
    console.log(
      `${what}: p50 ${percentile(times, 0.5).toFixed(0)} ms, p95 ${percentile(times, 0.95).toFixed(0)} ms, ${times.length} answers`,
    )
  return percentile(page, 0.95) / percentile(empty, 0.95)
}

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
