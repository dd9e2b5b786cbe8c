import { NEUTRAL_NOTATION, type Notation } from './notation'

/** How time, numbers and dates are told at a works; handed in wherever something is typed or shown. */
export interface Works {
  /** By its IANA name. */
  readonly timeZone: string
  readonly notation: Notation
  /** What money is counted in, by ISO 4217; undefined where none is stated. */
  readonly currency?: string | undefined
}

/** Where nothing is stated. */
export const NEUTRAL_WORKS: Works = { timeZone: 'UTC', notation: NEUTRAL_NOTATION }
