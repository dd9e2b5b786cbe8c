import { ChoiceBox } from '@/app/forms/fields'
import type { FlagColumn } from '@/shared/columns/column'
import type { ColumnBoxes } from './boxes'
import { ChoiceCell } from './choice-cell'

/** A list and no box to tick: a yes or no that nobody chose is neither. */
const CHOICES = [
  { value: '', text: 'Choose …' },
  { value: 'yes', text: 'Yes' },
  { value: 'no', text: 'No' },
]

export const FLAG_BOXES: ColumnBoxes<FlagColumn> = {
  field: (_column, box) => <ChoiceBox {...box} choices={CHOICES} />,
  cell: (_column, box) => <ChoiceCell {...box} choices={CHOICES} />,
}
