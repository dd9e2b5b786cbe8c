import { ColumnField } from '@/app/forms/column-field'
import type { Column } from '@/shared/columns/column'
import { PART_COLUMNS } from '@/shared/works/part-columns'

/** The boxes of a part's values, in the order in which they are declared; boxes start with the values given. */
export function PartFields({ values = {} }: { values?: object }) {
  return (
    <div className="form-row">
      {Object.entries<Column>(PART_COLUMNS).map(([key, column]) => (
        <ColumnField
          key={key}
          name={`values.${key}`}
          column={column}
          value={(values as Readonly<Record<string, unknown>>)[key]}
        />
      ))}
    </div>
  )
}
