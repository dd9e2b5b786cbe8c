import type { DecimalSign } from '@/shared/quantity/notation'

/** A value that an exported cell can hold. */
export type CsvValue = string | number | boolean | null | undefined

/**
 * Characters that make a spreadsheet take a text cell for a formula, also behind
 * leading blanks. The union of the published lists, which differ on tab, carriage
 * return and NUL: OWASP ASVS 5.0.0 V1.2.10, the OWASP page on CSV injection, CWE-1236.
 * Line feed and the full-width forms of = + − @ are from memory.
 */
const STARTS_A_FORMULA = /^[ \u00a0]*[=+\-@\t\r\n\0\uff1d\uff0b\uff0d\uff20]/

/**
 * The same behind a separator within the text. A program that splits at semicolons or tabs sees no quotes
 * in the middle of a cell, so that what follows begins a cell of its own there; blanks and quotes may stand between.
 */
const STARTS_ONE_WHEN_SPLIT = /(?=[=+\-@\0\uff1d\uff0b\uff0d\uff20])(?<!')(?<=[;\t\r\n][ \u00a0\t\r\n"']*)./gs

/** Separators of other locales too, so that a file opened with another separator splits in fewer places. */
const NEEDS_QUOTES = /[",;\t\r\n]|^\s|\s$/

/**
 * One cell of a CSV file, safe to open in a spreadsheet.
 *
 * Text that would start a formula, or would in a file split at semicolons or tabs, gets an
 * apostrophe in front of it and is quoted; quoting alone does not stop a formula. A number is written as a number, so that
 * −1.5 stays a number; give numbers as numbers, not as text. NaN and the infinities,
 * which a spreadsheet cannot hold, are refused with a RangeError. Null and undefined
 * leave the cell empty.
 *
 * Source of the quoting: RFC 4180 section 2, rules 5 to 7.
 */
export function csvCell(value: CsvValue): string {
  if (value === null || value === undefined) return ''
  if (typeof value === 'boolean') return String(value)
  if (typeof value === 'number') {
    if (!Number.isFinite(value))
      throw new RangeError(`A cell cannot hold the number ${value}; leave it empty instead.`)
    return String(value)
  }
  const text = value.replace(STARTS_ONE_WHEN_SPLIT, "'$&")
  if (STARTS_A_FORMULA.test(text)) return quoted(`'${text}`)
  return NEEDS_QUOTES.test(text) ? quoted(text) : text
}

/** One record: cells between commas, ended by CRLF (RFC 4180 section 2, rule 1). */
export const csvLine = (cells: readonly CsvValue[]): string => `${cells.map(csvCell).join(',')}\r\n`

/**
 * The same with this decimal sign. Where that is a comma, semicolons part the cells, as spreadsheets of such locales
 * write and read them.
 */
export const csvLineWith = (cells: readonly CsvValue[], decimal: DecimalSign): string =>
  decimal === '.' ? csvLine(cells) : `${cells.map(withComma).join(';')}\r\n`

const withComma = (value: CsvValue): string =>
  typeof value === 'number' ? csvCell(value).replace('.', ',') : csvCell(value)

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`
