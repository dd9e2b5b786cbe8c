import { Facts } from '@/app/ui/facts'
import { CellValue } from '@/app/ui/parameter-value'
import type { Column } from '@/shared/columns/column'
import { PART_COLUMNS, type PartValues } from '@/shared/works/part-columns'

/** The values of a part that are known, in the order in which they are declared. */
export function PartValuesShown({ values }: { values: PartValues }) {
  const said = values as Readonly<Record<string, unknown>>
  const known = Object.entries<Column>(PART_COLUMNS).filter(
    ([key]) => said[key] !== undefined && said[key] !== null,
  )
  return (
    <Facts
      facts={known.map(([key, column]) => ({
        label: column.label,
        value: <CellValue column={column} value={said[key]} />,
      }))}
    />
  )
}
