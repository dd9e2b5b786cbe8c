import { requireLifeData, type LifeData } from '@/shared/reliability/weibull/life-data'

/**
 * Times of the failures of several tests run one after another, each counted in
 * the time that all units together had run by then. Within a test all units
 * start at once, and one that failed or was taken out runs no longer. Also
 * returns the time of all tests together.
 *
 * Units: those of the lives. RangeError for a life that is not above zero.
 * Source: total time on test, as for growth models of systems tested together (MIL-HDBK-189, from memory).
 */
export function failureTimesOnTest(tests: readonly LifeData[]): { times: number[]; end: number } {
  const times: number[] = []
  let end = 0
  for (const test of tests) {
    requireLifeData(test, 0)
    const lives = [...test.failures, ...(test.suspensions ?? [])]
    const runBy = (moment: number): number => lives.reduce((sum, life) => sum + Math.min(life, moment), 0)
    for (const life of test.failures.toSorted((a, b) => a - b)) times.push(end + runBy(life))
    end += runBy(Infinity)
  }
  return { times, end }
}
