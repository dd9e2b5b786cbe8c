import { ChoiceBox } from '@/app/forms/fields'
import type { ChoiceColumn } from '@/shared/columns/column'
import type { ColumnBoxes } from './boxes'
import { ChoiceCell } from './choice-cell'

const choicesOf = ({ optional, options }: ChoiceColumn<string>) => [
  { value: '', text: optional ? 'not said' : 'Choose …' },
  ...options.map(({ value, label }) => ({ value, text: label })),
]

export const CHOICE_BOXES: ColumnBoxes<ChoiceColumn<string>> = {
  field: (column, box) => <ChoiceBox {...box} choices={choicesOf(column)} />,
  cell: (column, box) => <ChoiceCell {...box} choices={choicesOf(column)} />,
}
