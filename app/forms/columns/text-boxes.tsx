import { TextBox } from '@/app/forms/fields'
import type { TextColumn } from '@/shared/columns/column'
import type { ColumnBoxes } from './boxes'

export const TEXT_BOXES: ColumnBoxes<TextColumn> = {
  field: ({ maxLength }, box) => <TextBox {...box} maxLength={maxLength} />,
  cell: (_column, box) => <input className="control" type="text" autoComplete="off" {...box} />,
}
