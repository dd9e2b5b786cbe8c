import { formatQuantity } from '@/shared/quantity/format'
import type { Lot } from '@/shared/records/lot'
import { exactProportionInterval } from '@/shared/statistics/intervals/exact-proportion'

const CONFIDENCE = 0.95

/** "2 of 9 disposed of; 2.81 % to 60 % of lots, exact 95 % bounds": what so few lots can show. */
export function rejectedInWords(lots: readonly Pick<Lot, 'disposition'>[]): string {
  const disposed = lots.filter(({ disposition }) => disposition)
  if (disposed.length === 0) return 'none disposed of yet'
  const found = disposed.filter(({ disposition }) => disposition?.verdict === 'reject').length
  const { lower, upper } = exactProportionInterval({ found, inspected: disposed.length }, CONFIDENCE)
  return `${found} of ${disposed.length} disposed of; ${formatQuantity(100 * lower, '%')} to ${formatQuantity(100 * upper, '%')} of lots, exact ${CONFIDENCE * 100} % bounds`
}
