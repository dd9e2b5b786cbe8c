import { dateText, dateTyped, hasShortYear } from '@/shared/quantity/date-typed'
import { decimalTyped } from '@/shared/quantity/decimal-typed'
import type { FileForm } from './file-form'
import { instantRule } from './read-instant'
import type { ReadingField } from './reading-field'

/** Reads one cell, not empty and without blanks around it; undefined when it is not what the field takes. */
export type CellReader = (text: string) => number | string | undefined

export type CellRule = {
  readonly read: CellReader
  /** What was expected, to follow "expected was". */
  readonly expected: string
  /** What was expected of a text that is nearly right, when that says more. */
  readonly why?: (text: string) => string | undefined
}

const LONGEST_TEXT = 500

/** How the cells of a field are read in a file of this form. */
export function cellRule(field: ReadingField, form: FileForm): CellRule {
  switch (field.kind) {
    case 'number': {
      const { min = -Infinity, max = Infinity, whole = false } = field
      const read: CellReader = (text) => {
        const number = readNumber(text, form)
        return number !== undefined && number >= min && number <= max && (!whole || Number.isInteger(number))
          ? number
          : undefined
      }
      return { read, expected: numberInWords(field, form), why: twoNumbers }
    }
    case 'instant':
      return instantRule(form)
    case 'date':
      return {
        read: (text) => dateTyped(text, form.dates),
        expected: `a date as ${dateText('2026-03-04', form.dates)}`,
        why: (text) => (hasShortYear(text) ? 'a year of four digits' : undefined),
      }
    case 'time of day':
      throw new RangeError('A time of day is read with its date.')
    case 'text': {
      const { maxLength = LONGEST_TEXT } = field
      return {
        read: (text) => (text.length <= maxLength ? text : undefined),
        expected: `text of ${maxLength} characters at most`,
      }
    }
    case 'choice': {
      const values = new Map(
        field.options.flatMap(
          ({ value, label }) =>
            [
              [label.toLowerCase(), value],
              [value.toLowerCase(), value],
            ] as const,
        ),
      )
      const expected = `one of: ${field.options.map(({ label }) => label).join(', ')}`
      return { read: (text) => values.get(text.toLowerCase()), expected }
    }
  }
}

/** A decimal number without blanks; adding zero turns minus zero into zero. */
function readNumber(text: string, { decimal }: FileForm): number | undefined {
  const number = /\s/.test(text) ? undefined : decimalTyped(text, decimal)
  return number === undefined ? undefined : number + 0
}

/** Thousands are never guessed at: what could be two numbers is asked for again. */
const twoNumbers = (text: string): string | undefined =>
  /^[+-]?\d{1,3}(?:[.,]\d{3})+$/.test(text)
    ? 'a number that can be read one way only, without a sign between thousands'
    : undefined

function numberInWords(field: ReadingField & { kind: 'number' }, { decimal }: FileForm): string {
  const { min, max, whole, unit } = field
  const units = unit ? ` ${unit}` : ''
  const kind = whole ? 'a whole number' : `a number such as ${decimal === ',' ? '0,82 or 0.82' : '0.82'}`
  if (min !== undefined && max !== undefined) return `${kind} from ${min} to ${max}${units}`
  if (min !== undefined) return `${kind}, ${min}${units} or more`
  if (max !== undefined) return `${kind}, ${max}${units} or less`
  return kind
}
