import type { Column } from '@/shared/columns/column'

/** A process characteristic that is logged over time: what one reading holds. */
export interface Characteristic {
  readonly key: string
  /** As in "log of …": lower case. */
  readonly label: string
  readonly help: string
  /** Every reading also has an instant, `at`, in epoch milliseconds. */
  readonly columns: Readonly<Record<string, Column>>
  /** The column drawn on the chart and put under run rules. */
  readonly charted: string
}
