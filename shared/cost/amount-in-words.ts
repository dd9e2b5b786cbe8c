import { formatNumber } from '@/shared/quantity/format'
import { isExact, isKnown, type Amount } from './amount'

/** An amount as it is read: "12.5", "12 to 15", or "not known". */
export function amountInWords(amount: Amount, significantFigures = 4): string {
  if (!isKnown(amount)) return 'not known'
  const from = formatNumber(amount.from, significantFigures)
  const to = formatNumber(amount.to, significantFigures)
  return isExact(amount) || from === to ? from : `${from} to ${to}`
}
