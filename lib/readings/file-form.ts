import { DECIMAL } from '@/shared/quantity/decimal-typed'
import type { DateOrder, DecimalSign } from '@/shared/quantity/notation'
import type { Works } from '@/shared/quantity/works'
import { detectDelimiter, type Delimiter } from './delimiter'

/** How what is written in a file is to be read. */
export interface FileForm {
  readonly delimiter: Delimiter
  readonly decimal: DecimalSign
  readonly dates: DateOrder
  /** By its IANA name: the clock of the times that say no zone. */
  readonly timeZone: string
}

/**
 * How a file is read, by its first lines: the separator, and the decimal sign that its numbers show; where they show
 * none, and for dates and times, as the works writes. Numbers with a comma never stand in a file parted by commas.
 */
export function detectForm(head: string, { notation, timeZone }: Works): FileForm {
  const delimiter = detectDelimiter(head)
  const decimal =
    delimiter === ',' ? '.' : (signShown(head, delimiter) ?? usualSign(delimiter, notation.decimal))
  return { delimiter, decimal, dates: notation.dates, timeZone }
}

/** The sign in the first number that shows one beyond doubt: a single one, which cannot part thousands. */
function signShown(head: string, delimiter: Delimiter): DecimalSign | undefined {
  for (const cell of head.split(/\r\n|\n|\r/).flatMap((line) => line.split(delimiter))) {
    const text = cell.trim().replaceAll('"', '')
    const sign = text.includes(',') ? ',' : '.'
    const [before = '', after, more] = text.split(sign)
    if (after === undefined || more !== undefined) continue
    if (after.length === 3 && /^[+-]?[1-9]\d{0,2}$/.test(before)) continue
    if (DECIMAL.test(`${before}.${after}`)) return sign
  }
  return undefined
}

/** A file parted by semicolons is made where the comma is the decimal sign. */
const usualSign = (delimiter: Delimiter, ofWorks: DecimalSign): DecimalSign =>
  delimiter === ';' ? ',' : ofWorks
