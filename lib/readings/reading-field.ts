import type { Column, ColumnKindName, ColumnOf } from '@/shared/columns/column'
import { printedUnit } from '@/shared/quantity/unit'

/** What one column of an import is read as. */
export type ReadingField = {
  /** The key of the column in the result. */
  readonly name: string
  /** As the person knows it. */
  readonly label: string
  readonly required: boolean
  /** Other headings that mean this field. */
  readonly alsoCalled?: readonly string[]
} & FieldKind

type FieldKind = NumberField | InstantField | TimeOfDayField | DateField | TextField | ChoiceField

type NumberField = {
  readonly kind: 'number'
  readonly min?: number
  readonly max?: number
  readonly whole?: boolean
  /** For the messages; empty for a plain number. */
  readonly unit?: string
}
/** Read as milliseconds since 1970-01-01T00:00:00Z. */
type InstantField = { readonly kind: 'instant' }
/** The time of day of an instant's column, where that holds the date alone; read together with it. */
type TimeOfDayField = { readonly kind: 'time of day'; readonly of: string }
/** A calendar date, kept as `YYYY-MM-DD`. */
type DateField = { readonly kind: 'date' }
type TextField = { readonly kind: 'text'; readonly maxLength?: number }
/** Read as the option's value; the file may hold value or label. */
type ChoiceField = {
  readonly kind: 'choice'
  readonly options: readonly { readonly value: string; readonly label: string }[]
}

/** The instant that every reading of a log has. */
export const INSTANT_FIELD: ReadingField = {
  name: 'at',
  label: 'Time',
  kind: 'instant',
  required: true,
  alsoCalled: ['timestamp', 'date time', 'date and time', 'datetime', 'instant', 'date', 'utc', 'time utc'],
}

/** The second half of such an instant, where date and time of day stand in columns of their own. */
export const TIME_OF_DAY_FIELD: ReadingField = {
  name: 'at.time',
  label: 'Time of day, where it has a column of its own',
  kind: 'time of day',
  of: 'at',
  required: false,
}

/** How a column of each kind is read from a file; a yes or no and a range are not, since readings hold numbers and text. */
const FIELD_OF_KIND: { readonly [K in ColumnKindName]: (column: ColumnOf<K>) => FieldKind } = {
  number: ({ min, max, whole, unit }) => ({ kind: 'number', min, max, whole, unit: printedUnit(unit) }),
  choice: ({ options }) => ({ kind: 'choice', options }),
  text: ({ maxLength }) => ({ kind: 'text', maxLength }),
  date: () => ({ kind: 'date' }),
  range({ label }) {
    throw new RangeError(`${label} is a range; readings hold one number each.`)
  },
  flag({ label }) {
    throw new RangeError(`${label} is yes or no; readings hold numbers and text.`)
  },
}

/** The fields that a record's columns ask for. RangeError for a column of yes or no or of ranges, which readings do not hold. */
export const fieldsOf = (columns: Readonly<Record<string, Column>>): ReadingField[] =>
  Object.entries(columns).map(([name, column]) => {
    const fieldOf = FIELD_OF_KIND[column.kind] as (column: Column) => FieldKind
    const { label, optional, alsoCalled } = column
    return { name, label, required: !optional, ...(alsoCalled && { alsoCalled }), ...fieldOf(column) }
  })
