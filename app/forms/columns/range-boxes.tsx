import { TextBox } from '@/app/forms/fields'
import type { RangeColumn } from '@/shared/columns/column'
import type { ColumnBoxes } from './boxes'

/** Longer than any two numbers and the word between them. */
const LONGEST = 60

export const RANGE_BOXES: ColumnBoxes<RangeColumn> = {
  field: (_column, box) => <TextBox {...box} maxLength={LONGEST} />,
  cell: (_column, box) => (
    <input className="control control-number" type="text" autoComplete="off" maxLength={LONGEST} {...box} />
  ),
}
