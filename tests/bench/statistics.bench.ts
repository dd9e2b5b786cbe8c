/*
 * How long the statistics take that run while a person types, against ten thousand logarithms.
 * Run: npx tsx tests/bench/statistics.bench.ts
 */
import { noncentralTQuantile } from '@/shared/statistics/distributions/noncentral-t'
import { exactRateUpperBound } from '@/shared/statistics/intervals/exact-poisson-rate'
import { exactProportionInterval } from '@/shared/statistics/intervals/exact-proportion'
import { eventsExpectedToShow } from '@/shared/statistics/intervals/sequential-rate'
import { whatTheSampleProves } from '@/shared/statistics/sampling/what-the-sample-proves'
import { oneSidedToleranceFactor } from '@/shared/statistics/tolerance/one-sided-factor'
import { twoSidedToleranceFactor } from '@/shared/statistics/tolerance/two-sided-factor'

/** Half of the calls took no longer than this; the median does not mind what else the machine does. */
function medianMs(call: () => unknown): number {
  const times = Array.from({ length: 101 }, () => {
    const start = performance.now()
    call()
    return performance.now() - start
  })
  return times.sort((a, b) => a - b)[50]!
}

const WORST = { coverage: 0.99, confidence: 0.95 }
const MAX_RATIO = 5
const CASES: Record<string, () => unknown> = {
  'one-sided tolerance factor': () => oneSidedToleranceFactor(10, WORST),
  'the same from three readings': () => oneSidedToleranceFactor(3, { coverage: 0.99, confidence: 0.99 }),
  'two-sided tolerance factor': () => twoSidedToleranceFactor(10, WORST),
  'exact proportion': () => exactProportionInterval({ found: 7, inspected: 250_000 }, 0.95),
  'exact rate': () => exactRateUpperBound({ events: 40, exposure: 1e9 }, 0.9),
  'events to expect at every look': () => eventsExpectedToShow(40, 0.9),
  'what the sample proves': () =>
    whatTheSampleProves({ lotSize: 5000, sampleSize: 200, defectives: 3 }, 0.95),
  'noncentral t quantile': () => noncentralTQuantile(0.99, { degreesOfFreedom: 199, noncentrality: 55 }),
}

let sum = 0
const logarithmsMs = medianMs(() => {
  for (let n = 1; n <= 10_000; n++) sum += Math.log(n)
})
if (sum === 0) throw new Error('There was nothing to do.')
for (const [name, call] of Object.entries(CASES)) {
  const ratio = medianMs(call) / logarithmsMs
  console.log(`${name}: ${ratio.toFixed(1)} times ten thousand logarithms (at most ${MAX_RATIO})`)
  if (ratio > MAX_RATIO) process.exitCode = 1
}
