import { fSf } from '@/shared/statistics/distributions/fisher-f'
import type { LifeData } from './life-data'

/** Whether failures lie as those of one Weibull do. */
export interface WeibullFitTest {
  readonly statistic: number
  /** Chance of so large a statistic if they do: small where the lives are not of one Weibull. */
  readonly chance: number
}

const FEWEST_FAILURES = 4

/**
 * Test of fit to a Weibull by the gaps between the logarithms of the lives,
 * each over the gap to be expected: late gaps too wide against early ones speak
 * of another distribution, or of two. For units taken out at the end only;
 * undefined with fewer than four failures or with units taken out earlier.
 * Source: N. R. Mann, E. M. Scheuer, K. W. Fertig, Communications in Statistics
 * 2 (1973) 383, with the approximate expected gaps of the handbooks (from memory).
 */
export function weibullFitTest({ failures, suspensions = [] }: LifeData): WeibullFitTest | undefined {
  const lives = failures.toSorted((a, b) => a - b)
  const last = lives.at(-1)
  if (lives.length < FEWEST_FAILURES || suspensions.some((life) => life < last!)) return undefined
  const units = lives.length + suspensions.length
  const place = (index: number): number => Math.log(-Math.log1p(-(index + 0.5) / (units + 0.25)))
  const gaps = lives
    .slice(1)
    .map((life, index) => Math.log(life / lives[index]!) / (place(index + 1) - place(index)))
  const early = Math.floor(lives.length / 2)
  const late = gaps.length - early
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
  const ofEarly = sum(gaps.slice(0, early))
  if (!(ofEarly > 0)) return undefined
  const statistic = sum(gaps.slice(early)) / late / (ofEarly / early)
  return { statistic, chance: fSf(statistic, 2 * late, 2 * early) }
}
