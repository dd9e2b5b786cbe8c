import type { ExportColumn } from '@/lib/exports/tables/export-table'
import type { Works } from '@/shared/quantity/works'

/** A column's heading; of a time it names the zone, which no cell does. */
export const headingAtWorks = (
  { heading, kind }: Pick<ExportColumn<never>, 'heading' | 'kind'>,
  { timeZone }: Works,
): string => (kind === 'instant' ? `${heading} (${timeZone})` : heading)
