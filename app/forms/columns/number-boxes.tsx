import { NumberBox } from '@/app/forms/fields'
import type { NumberColumn } from '@/shared/columns/column'
import { printedUnit } from '@/shared/quantity/unit'
import type { ColumnBoxes } from './boxes'

export const NUMBER_BOXES: ColumnBoxes<NumberColumn> = {
  field: ({ unit }, box) => <NumberBox {...box} unit={printedUnit(unit)} />,
  cell: (_column, box) => (
    <input className="control control-number" type="text" inputMode="decimal" autoComplete="off" {...box} />
  ),
}
