/** The sign before the decimals of a number. */
export const DECIMAL_SIGNS = ['.', ','] as const
export type DecimalSign = (typeof DECIMAL_SIGNS)[number]

/** In which order a date written in figures is read; one that begins with its year can be read anywhere. */
export const DATE_ORDERS = ['year first', 'day first', 'month first'] as const
export type DateOrder = (typeof DATE_ORDERS)[number]

/** How numbers and dates in figures are written at a works. */
export interface Notation {
  readonly decimal: DecimalSign
  readonly dates: DateOrder
}

/** A point before decimals, and dates by ISO 8601 only: what stored text, files for machines and an unstated locale use. */
export const NEUTRAL_NOTATION: Notation = { decimal: '.', dates: 'year first' }

/**
 * How a locale, named by its BCP 47 tag such as de-DE, writes numbers and dates, by the platform's Unicode CLDR data.
 * Undefined for a tag that is none or not known there, and for a locale with another decimal sign.
 */
export function notationOf(locale: string): Notation | undefined {
  try {
    if (Intl.NumberFormat.supportedLocalesOf(locale).length === 0) return undefined
    const decimal = new Intl.NumberFormat(locale, { numberingSystem: 'latn' })
      .formatToParts(1.5)
      .find(({ type }) => type === 'decimal')?.value
    return decimal === '.' || decimal === ',' ? { decimal, dates: dateOrderOf(locale) } : undefined
  } catch {
    return undefined
  }
}

function dateOrderOf(locale: string): DateOrder {
  const parts = new Intl.DateTimeFormat(locale, {
    calendar: 'gregory',
    numberingSystem: 'latn',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).formatToParts(0)
  const first = parts.find(({ type }) => type === 'year' || type === 'month' || type === 'day')?.type
  return first === 'day' ? 'day first' : first === 'month' ? 'month first' : 'year first'
}
