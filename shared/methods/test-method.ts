import type { Column } from '@/shared/columns/column'

/** A way of testing a lot: its conditions, and what one reading holds. */
export interface TestMethod {
  readonly key: string
  readonly label: string
  readonly help: string
  /** Which kinds of lot it applies to. */
  readonly lotKinds: readonly string[]
  /** Whether its result depends on solder, flux, bath temperature and ageing. */
  readonly ofSolderability: boolean
  /** Whether a reading is worth what an instrument is; else it is made by eye and document alone. */
  readonly byInstrument: boolean
  readonly conditions: Readonly<Record<string, Column>>
  readonly columns: Readonly<Record<string, Column>>
  /** The column drawn against the limit. */
  readonly charted: string
  readonly cautions: readonly string[]
}
