import { numberOf, type ExportColumn } from '@/lib/exports/tables/export-table'
import { isKnown } from '@/shared/cost/amount'
import { amountIn, type CostLine } from '@/shared/cost/cost-line'

/** The two ends of a row's amount; empty where it is not known. */
export const AMOUNT_COLUMNS: readonly ExportColumn<{ readonly line: CostLine }>[] = [
  { ...numberOf('At least', ({ line }: { readonly line: CostLine }) => endsOf(line)?.from), money: true },
  { ...numberOf('At most', ({ line }: { readonly line: CostLine }) => endsOf(line)?.to), money: true },
]

function endsOf(line: CostLine) {
  const amount = amountIn(line)
  return isKnown(amount) ? amount : undefined
}
