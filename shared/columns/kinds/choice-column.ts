import type { ChoiceColumn } from '@/shared/columns/column'
import type { ColumnKind } from '@/shared/columns/column-kind'

type Choice = ChoiceColumn<string>

const labelOf = ({ options }: Choice, value: unknown): string =>
  options.find((option) => option.value === value)?.label ?? String(value)

/** One of a closed list. */
export const CHOICE_COLUMN: ColumnKind<Choice> = {
  schema: (make, { label, options }) =>
    make.enum(options.map(({ value }) => value) as [string, ...string[]], {
      error: `${label}: choose one of the listed values.`,
    }),
  fromTyped: (_column, typed) => typed?.trim() || undefined,
  toTyped: (_column, value) => String(value),
  fromSpreadsheet({ options }, text) {
    const asked = text.toLowerCase()
    return options.find(({ value, label }) => value === text || label.toLowerCase() === asked)?.value ?? ''
  },
  readingTest({ options }) {
    const listed = new Set<number | string>(options.map(({ value }) => value))
    return (cell) => listed.has(cell)
  },
  unit: () => undefined,
  inWords: labelOf,
  inSentence: (column, value) => labelOf(column, value).toLowerCase(),
  withoutLabel: labelOf,
}
