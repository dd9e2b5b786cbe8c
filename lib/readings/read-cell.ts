import { DECIMAL } from '@/shared/quantity/decimal-typed'
import { isDate } from '@/shared/quantity/is-date'
import { readRfc3339, utcEpochMs } from '@/shared/trail/rfc3339'
import type { Delimiter } from './delimiter'
import type { ReadingField } from './reading-field'

/** Reads one cell, not empty and without blanks around it; undefined when it is not what the field takes. */
export type CellReader = (text: string) => number | string | undefined

export type CellRule = {
  readonly read: CellReader
  /** What was expected, to follow "expected was". */
  readonly expected: string
}

const LONGEST_TEXT = 500
const UTC_WITHOUT_ZONE = /^(\d{4})-(\d\d)-(\d\d) (\d\d):(\d\d)(?::(\d\d)(?:\.(\d{1,9}))?)?$/

/** How the cells of a field are read in a file with this separator. */
export function cellRule(field: ReadingField, delimiter: Delimiter): CellRule {
  switch (field.kind) {
    case 'number': {
      const { min = -Infinity, max = Infinity, whole = false } = field
      const toNumber = delimiter === ';' ? readNumberWithComma : readNumber
      const read: CellReader = (text) => {
        const number = toNumber(text)
        return number !== undefined && number >= min && number <= max && (!whole || Number.isInteger(number))
          ? number
          : undefined
      }
      return { read, expected: numberInWords(field, delimiter) }
    }
    case 'instant':
      return { read: readInstant, expected: 'a time as 2026-03-04T10:11:12Z, or 2026-03-04 10:11 in UTC' }
    case 'date':
      return { read: readDate, expected: 'a date as 2026-03-04' }
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

/** A decimal number as it is written with a point; adding zero turns minus zero into zero. */
function readNumber(text: string): number | undefined {
  if (!DECIMAL.test(text)) return undefined
  const number = Number(text) + 0
  return Number.isFinite(number) ? number : undefined
}

/** One comma may stand for the point; point and comma together would be a guess at thousands. */
function readNumberWithComma(text: string): number | undefined {
  const at = text.indexOf(',')
  if (at < 0) return readNumber(text)
  return text.includes('.') ? undefined : readNumber(`${text.slice(0, at)}.${text.slice(at + 1)}`)
}

/** RFC 3339, or date and time of day without a zone, which is taken as UTC. In milliseconds since 1970. */
function readInstant(text: string): number | undefined {
  const withZone = readRfc3339(text)
  if (withZone) return withZone.epochMs
  const found = UTC_WITHOUT_ZONE.exec(text)
  if (!found) return undefined
  const [, year, month, day, hour, minute, second = '0', fraction = ''] = found
  const wholeSecondMs = utcEpochMs(
    Number(year),
    Number(month),
    Number(day),
    Number(hour),
    Number(minute),
    Number(second),
  )
  return wholeSecondMs === undefined ? undefined : wholeSecondMs + Number(fraction.slice(0, 3).padEnd(3, '0'))
}

const readDate: CellReader = (text) => (isDate(text) ? text : undefined)

function numberInWords(field: ReadingField & { kind: 'number' }, delimiter: Delimiter): string {
  const { min, max, whole, unit } = field
  const units = unit ? ` ${unit}` : ''
  const kind = whole ? 'a whole number' : `a number such as ${delimiter === ';' ? '0,82 or 0.82' : '0.82'}`
  if (min !== undefined && max !== undefined) return `${kind} from ${min} to ${max}${units}`
  if (min !== undefined) return `${kind}, ${min}${units} or more`
  if (max !== undefined) return `${kind}, ${max}${units} or less`
  return kind
}
