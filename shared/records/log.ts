import type { Readings } from './readings'

/** Readings of one process characteristic on one line or machine, in time order. */
export interface Log {
  readonly id: string
  readonly code: string
  readonly characteristic: string
  readonly line: string
  readonly machine: string
  readonly instrumentId: string | null
  /** By what name and of which machine it is kept at the works; not known of logs made up for a test. */
  readonly atWorks?: { readonly machine: string; readonly log: string }
  /** IANA name of the zone by whose clock its days are told, the works' own; UTC where it is not said. */
  readonly timeZone?: string
  /** Columns of the characteristic, and `at` in epoch milliseconds, ascending. */
  readonly readings: Readings
}
