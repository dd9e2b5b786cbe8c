import type { LotKind } from '@/shared/methods/lot-kind'
import type { TestMethodKey } from '@/shared/methods/test-methods'

export type Row = Readonly<Record<string, number | string | null>>

/** One test of a lot: how, with which instrument, under which conditions, and its readings row by row. */
export interface LotTestStory {
  readonly method: TestMethodKey
  readonly instrument: string | null
  readonly conditions: Readonly<Record<string, string | number>>
  readonly rows: readonly Row[]
}

/** A delivery and how it is tested. */
export interface LotStory {
  readonly code: string
  readonly kind: LotKind
  readonly part: string
  readonly supplier: string
  readonly quantity: number
  readonly supplierResult: string
  readonly tests: readonly LotTestStory[]
}
