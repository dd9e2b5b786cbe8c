import type { ExportColumn } from '@/lib/exports/tables/export-table'
import type { Works } from '@/shared/quantity/works'

/** A column's heading; of a time it names the zone, of money the currency, which no cell does. */
export const headingAtWorks = (
  { heading, kind, money = false }: Pick<ExportColumn<never>, 'heading' | 'kind' | 'money'>,
  { timeZone, currency }: Works,
): string => {
  if (kind === 'instant') return `${heading} (${timeZone})`
  return money && currency ? `${heading}, ${currency}` : heading
}
