import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable } from '@/app/ui/ruled-table'
import { formatNumber } from '@/shared/quantity/format'
import type { Source } from '@/shared/sources/source'

/** Published values to choose from or to judge by; every row says where it comes from. */
export interface ReferenceTable {
  readonly caption: string
  /** A word on how the table is to be read. */
  readonly note?: string
  /** The first column names the row. */
  readonly columns: readonly { readonly label: string; readonly set?: 'text' | 'number' }[]
  readonly rows: readonly ReferenceRow[]
}

export interface ReferenceRow {
  readonly cells: readonly string[]
  readonly source: Source
  /** The programme uses this row. */
  readonly chosen?: boolean
}

/** A table folded away until somebody chooses from it; the row in use is marked. */
export function ReferenceTableShown({ table }: { table: ReferenceTable }) {
  const { caption, note, columns, rows } = table
  return (
    <Disclosure summary={`What the table says: ${caption}`} printed={false}>
      {note && <p className="section-lead">{note}</p>}
      <RuledTable
        caption={caption}
        captionHidden
        narrow="cards-early"
        rows={rows}
        rowKey={(_, position) => position}
        columns={[
          ...columns.map(({ label, set }, at) => ({
            label,
            set: set ?? ('text' as const),
            names: at === 0,
            cell: ({ cells, chosen }: ReferenceRow) =>
              at === 0 && chosen ? (
                <>
                  {cells[at]} <strong className="ink-copper whitespace-nowrap">(as specified)</strong>
                </>
              ) : (
                cells[at]
              ),
          })),
          {
            label: 'Source',
            cell: ({ source }: ReferenceRow) => (
              <>
                {source.cite} ({source.how})
              </>
            ),
          },
        ]}
      />
    </Disclosure>
  )
}

/** "5 to 10", "5 and more", "–". */
export function rangeText(min: number | undefined, max: number | undefined): string {
  if (min === undefined) return max === undefined ? '–' : `up to ${formatNumber(max)}`
  if (max === undefined) return `${formatNumber(min)} and more`
  return min === max ? formatNumber(min) : `${formatNumber(min)} to ${formatNumber(max)}`
}

/** A number column. */
export const numbers = (...labels: string[]): { label: string; set: 'number' }[] =>
  labels.map((label) => ({ label, set: 'number' }))
/** A text column. */
export const texts = (...labels: string[]): { label: string }[] => labels.map((label) => ({ label }))
