import type { StoredAs, TextColumn } from '@/shared/columns/column'
import type { DecimalSign } from '@/shared/quantity/notation'
import { numberOrRangeTyped } from '@/shared/quantity/range-text'
import { minuteOf } from '@/shared/quantity/minute-of'
import { runRuleInWords } from '@/shared/statistics/run-rules/run-rule-in-words'
import type { ColumnKind } from '@/shared/columns/column-kind'

const IN_WORDS: Readonly<Record<StoredAs, (stored: string) => string>> = {
  signal: runRuleInWords,
  instant: minuteOf,
}

const asItIs = ({ told }: TextColumn, value: unknown): string =>
  told ? IN_WORDS[told](String(value)) : String(value)

/** What is no number with this sign, such as 1.234 with a comma, must be none with a point either. */
const pointsForCommas = (text: string, decimal: DecimalSign): string =>
  decimal === ',' && /^[\d.,\s]+$/.test(text)
    ? text.replace(/[.,]/g, (sign) => (sign === ',' ? '.' : ','))
    : text

/** A line or a paragraph. */
export const TEXT_COLUMN: ColumnKind<TextColumn> = {
  schema: (make, { label, maxLength }) =>
    make
      .string({ error: `${label} must be filled in.` })
      .trim()
      .min(1, `${label} must be filled in.`)
      .max(maxLength, `${label} has at most ${maxLength} characters.`),
  fromTyped({ figures }, typed, { decimal }) {
    const text = typed?.trim() ?? ''
    const read = figures ? numberOrRangeTyped(text, decimal) : undefined
    if (read !== undefined) return String(read)
    return (figures ? pointsForCommas(text, decimal) : text) || undefined
  },
  toTyped: ({ figures }, value, { decimal }) =>
    figures ? String(value).replace(/(\d)\.(?=\d)/g, `$1${decimal}`) : String(value),
  fromSpreadsheet: (_column, text) => text,
  readingTest: ({ maxLength }) => {
    return (cell) => typeof cell === 'string' && cell.trim() !== '' && cell.trim().length <= maxLength
  },
  unit: () => undefined,
  inWords: asItIs,
  inSentence: asItIs,
  withoutLabel: asItIs,
}
