import type { LotKind } from '@/shared/methods/lot-kind'
import type { Readings } from './readings'

export const DISPOSITIONS = ['accept', 'reject', 'use under concession'] as const
export type Disposition = (typeof DISPOSITIONS)[number]

/** A delivered batch, how it was tested and what was decided about it. */
export interface Lot {
  readonly id: string
  readonly code: string
  readonly kind: LotKind
  /** What it is: "bare board LX-41 rev C", "transformer T1". */
  readonly part: string
  readonly supplier: string
  readonly dateCode: string
  readonly quantity: number
  /** 'YYYY-MM-DD' */
  readonly receivedOn: string
  readonly storage: LotStorage
  /** What the supplier states, kept as stated; '' when nothing came with the lot. */
  readonly supplierResult: string
  /** The last day on which it may be used; absent where none was stated. */
  readonly expiresOn?: string
  readonly tests: readonly LotTest[]
  readonly disposition: {
    readonly verdict: Disposition
    readonly by: string
    readonly on: string
    readonly reason: string
  } | null
  /** Assemblies that parts of this lot went into; of the programme that reads it, where several use the lot. */
  readonly usedIn: readonly string[]
  /** Of a lot of the works: where it is tested and disposed of, and how many pieces the programme holds. */
  readonly atWorks?: { readonly supplier: string; readonly lot: string; readonly allocated: number }
  /** Of another delivery that the works had, of which the programme holds none: where it is found. */
  readonly inStore?: { readonly supplier: string; readonly lot: string }
}
export interface LotStorage {
  readonly temperatureC: number
  readonly relativeHumidityPct: number
  readonly packing: string
}

/** One test of a lot: method, conditions and readings as imported. */
export interface LotTest {
  readonly id: string
  /** Key of a test method (shared/methods/test-methods). */
  readonly method: string
  /** 'YYYY-MM-DD' */
  readonly testedOn: string
  readonly testedBy: string
  readonly instrumentId: string | null
  /** The method's own conditions: bath temperature, alloy, flux, ageing. */
  readonly conditions: Readonly<Record<string, number | string | boolean | undefined>>
  readonly readings: Readings
}
