/*
 * How long a route card takes, against the emptiest page that the same server
 * renders. Starts the app on a data folder of its own, with the demo; LIQUIDUS_BENCH_URL names one that runs
 * already instead.
 * Run: npx tsx tests/bench/route-card.bench.ts
 */
import { timesEmptyPage } from '@/tests/bench/page-times'
import { signIn, withRunningApp } from '@/tests/bench/running-app'

const MAX_RATIO = 3

await withRunningApp(async (base) => {
  const cookie = await signIn(base)
  const ratio = await timesEmptyPage({
    base,
    cookie,
    path: '/programmes/LX-41',
    name: 'route card',
    text: 'Route card',
  })
  console.log(
    `at p95 the route card takes ${ratio.toFixed(2)} times the empty page (wanted: ${MAX_RATIO} or less)`,
  )
  if (!(ratio <= MAX_RATIO)) process.exitCode = 1
})
