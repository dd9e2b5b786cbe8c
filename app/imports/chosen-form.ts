import type { Delimiter } from '@/lib/readings/delimiter'
import type { FileForm } from '@/lib/readings/file-form'
import { isTimeZone } from '@/shared/quantity/works-clock'
import { DATE_ORDERS, DECIMAL_SIGNS } from '@/shared/quantity/notation'

type Given = Readonly<Record<string, string | undefined>>

/** The boxes in which a person says how a file is read. */
export const FORM_BOXES = {
  delimiter: 'as.delimiter',
  decimal: 'as.decimal',
  dates: 'as.dates',
  timeZone: 'as.timeZone',
} as const satisfies Record<keyof FileForm, string>

const DELIMITERS: readonly Delimiter[] = [',', ';', '\t']

/** How the file is to be read, as far as that was chosen in a form or an address. */
export function formFrom(given: Given): Partial<FileForm> {
  const oneOf = <T extends string>(all: readonly T[], box: string) => all.find((one) => one === given[box])
  const [delimiter, decimal, dates] = [
    oneOf(DELIMITERS, FORM_BOXES.delimiter),
    oneOf(DECIMAL_SIGNS, FORM_BOXES.decimal),
    oneOf(DATE_ORDERS, FORM_BOXES.dates),
  ]
  const timeZone = given[FORM_BOXES.timeZone]?.trim()
  return {
    ...(delimiter && { delimiter }),
    ...(decimal && { decimal }),
    ...(dates && { dates }),
    ...(timeZone && isTimeZone(timeZone) && { timeZone }),
  }
}

export const DELIMITER_CHOICES = [
  { value: ',', text: 'a comma' },
  { value: ';', text: 'a semicolon' },
  { value: '\t', text: 'a tab' },
]
export const DECIMAL_CHOICES = [
  { value: '.', text: 'a point: 0.5' },
  { value: ',', text: 'a comma: 0,5' },
]
export const DATE_CHOICES = [
  { value: 'year first', text: '2026-12-31 only' },
  { value: 'day first', text: '31.12.2026 or 31/12/2026' },
  { value: 'month first', text: '12/31/2026' },
]
