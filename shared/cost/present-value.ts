import { requireNotNegative, requirePositive } from '@/shared/statistics/argument-checks'
import { requireFinite } from '@/shared/statistics/reading-checks'

/**
 * What one unit of money at the end of each year is worth today:
 * (1 − (1 + i)^−n) ÷ i; n when nothing is discounted. `yearlyRate` is a
 * fraction, 0.08 for 8 %. Source: definition, payments at the end of the year.
 */
export function annuityFactor(yearlyRate: number, years: number): number {
  requireNotNegative(yearlyRate, 'yearly rate of discount')
  requirePositive(years, 'number of years')
  return yearlyRate === 0 ? years : -Math.expm1(-years * Math.log1p(yearlyRate)) / yearlyRate
}

/**
 * Net present value of sums of money: `sums[0]` today, `sums[k]` at the end of
 * year k; what is spent is negative. Source: definition.
 */
export function netPresentValue(sums: readonly number[], yearlyRate: number): number {
  requireNotNegative(yearlyRate, 'yearly rate of discount')
  return sums.reduce((total, sum, year) => {
    requireFinite(sum, `sum of year ${year}`)
    return total + sum / (1 + yearlyRate) ** year
  }, 0)
}
