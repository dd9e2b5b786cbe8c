import type { FlagColumn } from '@/shared/columns/column'
import type { ColumnKind } from '@/shared/columns/column-kind'

/** Readings hold a yes or no as the word. */
const isYes = (value: unknown): boolean => value === true || value === 'yes'
const yesOrNo = (_column: FlagColumn, value: unknown): string => (isYes(value) ? 'yes' : 'no')

/** Yes or no. */
export const FLAG_COLUMN: ColumnKind<FlagColumn> = {
  schema: (make, { label }) => make.boolean({ error: `${label} is yes or no.` }),
  // Nothing chosen is never a no; only a box to tick that is not there at all is one.
  fromTyped: (_column, typed) => (typed === '' ? undefined : typed === 'yes' || typed === 'on'),
  toTyped: (_column, value) => (value === true ? 'yes' : 'no'),
  fromSpreadsheet(_column, text) {
    if (/^(yes|y|true|1|x)$/i.test(text)) return 'yes'
    return /^(no|n|false|0)$/i.test(text) ? 'no' : ''
  },
  readingTest: () => (cell) => cell === 'yes' || cell === 'no',
  unit: () => undefined,
  inWords: yesOrNo,
  inSentence: yesOrNo,
  withoutLabel: ({ label }, value) => (isYes(value) ? label.toLowerCase() : ''),
}
