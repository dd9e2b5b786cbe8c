import type { FormAction } from '@/app/forms/form-state'
import type { Actor } from '@/shared/actor'
import type { SpecifiedStart } from '@/shared/lot-tests/conditions-to-start-from'
import type { TestMethod } from '@/shared/methods/test-method'
import type { Instrument } from '@/shared/records/instrument'
import type { Lot } from '@/shared/records/lot'

/** Where a lot is tested, corrected and disposed of: at its supplier, or in the programme that recorded it before. */
export interface LotAt {
  /** How the forms of its commands name the place. */
  readonly names: Readonly<Record<string, string>>
  /** The page of the lot there. */
  readonly address: string
  readonly actor: Actor
  /** 'YYYY-MM-DD' */
  readonly today: string
  readonly instruments: readonly Instrument[]
  /** Conditions that programmes specify for a test of the lot. */
  readonly starts: (lot: Lot, method: TestMethod) => readonly SpecifiedStart[]
  /** Records a test whose readings are typed in. */
  readonly testLot: FormAction
}
