import type { Column } from '@/shared/columns/column'
import type { MachineKind } from '@/shared/works/machine-kind'

/**
 * Which readings of a shared machine say something about the boards of one programme. Of `the day of a run`: those of
 * the days on which it ran, and the newest before where a day has none. Of `until the next`: also the newest before each
 * such day and the first after it, since one analysis or check stands for the work up to the next. Of `as a course`: all up
 * to the first after the last run, since what came before tells where it is going. Of `always`: all of them.
 */
export type Speaks = 'of the day of a run' | 'until the next' | 'as a course' | 'always'

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
  /** Where it is taken, as a rule. */
  readonly takenAt: MachineKind
  readonly speaks: Speaks
  /** Taken of the boards of one programme alone, such as a profile: its log names the programme. */
  readonly ofOneProgramme?: true
  /** The column drawn on the chart and put under run rules. */
  readonly charted: string
}
