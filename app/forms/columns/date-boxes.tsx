import { TextBox } from '@/app/forms/fields'
import type { DateColumn } from '@/shared/columns/column'
import type { ColumnBoxes } from './boxes'

export const DATE_BOXES: ColumnBoxes<DateColumn> = {
  field: (_column, box) => <TextBox {...box} type="date" />,
  cell: (_column, box) => <input className="control" type="date" autoComplete="off" {...box} />,
}
