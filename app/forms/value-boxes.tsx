import { ColumnField } from '@/app/forms/column-field'
import { TableEditor } from '@/app/forms/table-editor'
import type { ParameterShape } from '@/shared/plan/parameter'

/** The boxes of one parameter's value, named under `value`: a field or a table, as it is declared. */
export function ValueBoxes({
  label,
  help,
  shape,
  value,
}: {
  label: string
  help: string
  shape: ParameterShape
  value: unknown
}) {
  if (shape.kind === 'field')
    return <ColumnField name="value" column={shape.column} value={value} hint={help} />
  return (
    <>
      <p className="field-hint">{help}</p>
      <TableEditor
        name="value"
        caption={label}
        columns={shape.columns}
        rows={(value as readonly Record<string, unknown>[] | undefined) ?? []}
        maxRows={shape.maxRows}
      />
    </>
  )
}
