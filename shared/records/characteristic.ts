import type { Column } from '@/shared/columns/column'

/** A process characteristic that is logged over time: what one reading holds. */
export interface Characteristic {
  readonly key: string
  /** As in "log of …": lower case. */
  readonly label: string
  readonly help: string
  /** Whether it stays level while nothing is wrong, and so has a chart with limits and signals to answer. */
  readonly level: boolean
  /** Whether a log is one pass that comes whole from a recorder, which may tell seconds from its start; nothing is typed in. */
  readonly comesWhole: boolean
  /** Every reading also has an instant, `at`, in epoch milliseconds. */
  readonly columns: Readonly<Record<string, Column>>
  /** Columns that are shares of one whole, in %: together they are no more than all of it. */
  readonly sharesOfWhole?: readonly string[]
  /** The column drawn on the chart and put under run rules. */
  readonly charted: string
}
