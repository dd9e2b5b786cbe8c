import { choiceColumn, numberColumn, optionalColumn, textColumn, type Column } from '@/shared/columns/column'
import { DEFECT_KINDS } from '@/shared/records/inspection'

/** A defect as it is entered at the bench. */
export const DEFECT_COLUMNS: Readonly<Record<string, Column>> = {
  kind: choiceColumn({ label: 'Defect', options: DEFECT_KINDS.map((value) => ({ value, label: value })) }),
  joint: textColumn({ label: 'Joint', maxLength: 40, help: 'Component and pin, such as T1-3.' }),
  xMm: optionalColumn(
    numberColumn({
      label: 'Across',
      unit: 'mm',
      min: 0,
      max: 2000,
      help: 'From the board’s lower left corner.',
    }),
  ),
  yMm: optionalColumn(numberColumn({ label: 'Up', unit: 'mm', min: 0, max: 2000 })),
  note: optionalColumn(textColumn({ label: 'Note', maxLength: 300 })),
}
