import type { Column, ColumnKindName, ColumnOf } from '@/shared/columns/column'
import { CHOICE_BOXES } from './choice-boxes'
import { DATE_BOXES } from './date-boxes'
import { FLAG_BOXES } from './flag-boxes'
import { NUMBER_BOXES } from './number-boxes'
import { RANGE_BOXES } from './range-boxes'
import { TEXT_BOXES } from './text-boxes'
import type { ColumnBoxes } from './boxes'

/** How each kind of column is asked for. */
const COLUMN_BOXES: { readonly [K in ColumnKindName]: ColumnBoxes<ColumnOf<K>> } = {
  number: NUMBER_BOXES,
  range: RANGE_BOXES,
  choice: CHOICE_BOXES,
  text: TEXT_BOXES,
  flag: FLAG_BOXES,
  date: DATE_BOXES,
}

/** The boxes of a column's kind, to be asked for that column only. */
export const boxesOf = (column: Column): ColumnBoxes<Column> => COLUMN_BOXES[column.kind]
