import type { AgeingEquivalence } from '@/shared/physics/ageing-equivalence'
import { DAYS_PER_MONTH } from '@/shared/quantity/calendar'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'

const CENTURY_MONTHS = 1200

/** "5.5 months to more than a century". */
export function monthsInWords(equivalence: AgeingEquivalence): string {
  if (equivalence.kind === 'none') return 'no storage time'
  const { minMonths, maxMonths } = equivalence
  return `${oneTime(minMonths)} to ${oneTime(maxMonths)}`
}

/** Every set of constants with its factor and its months. */
export const modelsInWords = (equivalence: AgeingEquivalence): string =>
  equivalence.kind === 'none'
    ? '–'
    : equivalence.models
        .map(({ name, factor, months }) => `${name}: ${timesInWords(factor)}, ${oneTime(months)}`)
        .join('; ')

function timesInWords(factor: number): string {
  if (factor >= 1e6) return `${formatNumber(factor / 1e6, 2)} million times as fast`
  return `${formatNumber(Number(factor.toPrecision(2)))} times as fast`
}

function oneTime(months: number): string {
  if (months > CENTURY_MONTHS) return 'more than a century'
  const days = months * DAYS_PER_MONTH
  return months < 1 ? formatQuantity(days, 'days', 2) : formatQuantity(months, 'months', 2)
}
