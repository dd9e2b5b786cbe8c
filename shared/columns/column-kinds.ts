import type { Column, ColumnKindName, ColumnOf } from './column'
import type { ColumnKind } from './column-kind'
import { CHOICE_COLUMN } from './kinds/choice-column'
import { DATE_COLUMN } from './kinds/date-column'
import { FLAG_COLUMN } from './kinds/flag-column'
import { NUMBER_COLUMN } from './kinds/number-column'
import { RANGE_COLUMN } from './kinds/range-column'
import { TEXT_COLUMN } from './kinds/text-column'

/** Every kind of column with what it does. */
const COLUMN_KINDS: { readonly [K in ColumnKindName]: ColumnKind<ColumnOf<K>> } = {
  number: NUMBER_COLUMN,
  range: RANGE_COLUMN,
  choice: CHOICE_COLUMN,
  text: TEXT_COLUMN,
  flag: FLAG_COLUMN,
  date: DATE_COLUMN,
}

/** The kind of a column, to be asked about that column only. */
export const kindOf = (column: Column): ColumnKind<Column> => COLUMN_KINDS[column.kind]
