import { choiceColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { tableParameter, type ValueOf } from '@/shared/plan/parameter'

/** The columns of a parts list, with what else they are called in files. */
export const partsListColumns = {
  references: optionalColumn(
    textColumn({
      label: 'References',
      maxLength: 1000,
      help: 'Such as "R1–R10, R12"; left open where the part has none, as solder and flux.',
      alsoCalled: ['Reference', 'Designator', 'Designators', 'Ref', 'RefDes', 'Reference designator'],
    }),
  ),
  part: textColumn({
    label: 'Part number',
    maxLength: 80,
    alsoCalled: ['Part', 'Part no.', 'Item number', 'Article', 'Article number', 'MPN'],
  }),
  quantity: numberColumn({
    label: 'Quantity',
    unit: 'pieces',
    min: 1,
    max: 100_000,
    whole: true,
    alsoCalled: ['Qty', 'Qty.', 'Count', 'Number'],
  }),
  soldered: optionalColumn(
    choiceColumn({
      label: 'Soldered',
      options: [
        { value: 'machine', label: 'By machine' },
        { value: 'hand', label: 'By hand' },
      ],
      help: 'Left open for what is not soldered onto the board, such as the board itself.',
    }),
  ),
  side: optionalColumn(
    choiceColumn({
      label: 'Side',
      options: [
        { value: 'top', label: 'Top' },
        { value: 'bottom', label: 'Bottom' },
      ],
    }),
  ),
}

/** Which parts of the works go onto the board, and where. */
export const partsList = tableParameter({
  key: 'parts-list',
  label: 'Parts list',
  help: 'One row for each part of the board, by its part number at the works, with the references it has on the board.',
  owner: 'design',
  maxRows: 400,
  columns: partsListColumns,
})
export type ListedRow = ValueOf<typeof partsList>[number]
