import { expect, test } from 'vitest'
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

// They run while a person types.
const CASES: [string, number, () => unknown][] = [
  ['one-sided tolerance factor', 1, () => oneSidedToleranceFactor(10, { coverage: 0.99, confidence: 0.95 })],
  ['the same from three readings', 1, () => oneSidedToleranceFactor(3, { coverage: 0.99, confidence: 0.99 })],
  ['two-sided tolerance factor', 2, () => twoSidedToleranceFactor(10, { coverage: 0.99, confidence: 0.95 })],
  ['exact proportion', 1, () => exactProportionInterval({ found: 7, inspected: 250_000 }, 0.95)],
  ['exact rate', 1, () => exactRateUpperBound({ events: 40, exposure: 1e9 }, 0.9)],
  ['events to expect at every look', 1, () => eventsExpectedToShow(40, 0.9)],
  [
    'what the sample proves',
    1,
    () => whatTheSampleProves({ lotSize: 5000, sampleSize: 200, defectives: 3 }, 0.95),
  ],
  ['noncentral t quantile', 2, () => noncentralTQuantile(0.99, { degreesOfFreedom: 199, noncentrality: 55 })],
]

test.each(CASES)('%s in less than %i ms', (_, limitMs, call) => {
  expect(medianMs(call)).toBeLessThan(limitMs)
})
