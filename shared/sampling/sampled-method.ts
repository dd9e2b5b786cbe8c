import type { Readings } from '@/shared/records/readings'
import type { TestMethodKey } from '@/shared/methods/test-methods'
import type { Unit } from '@/shared/quantity/unit'
import {
  dipAndLookTally,
  holeRiseTally,
  outcomeTally,
  receivingTally,
  rotaryDipTally,
  type SpecimenTally,
} from './specimen-tally'
import { memo } from '@/shared/memo'

/** A test whose specimens are counted good or bad and whose lots are sampled. */
export interface SampledMethod {
  readonly key: TestMethodKey
  /** What a specimen's reading is called in a sentence; undefined where nothing is measured. */
  readonly reading:
    { readonly name: string; readonly unit: Unit; readonly worseIs: 'greater' | 'smaller' } | undefined
  /** Its readings may be judged by mean and spread; shares that crowd at 100 % may not. */
  readonly fitsVariables: boolean
  /** How a specimen that merely falls short is described. */
  readonly outOfLimit: string
  readonly tally: (readings: Readings, limit: number) => SpecimenTally
}

/** Tallies are kept for as long as their readings are, one for each limit asked about. */
const remembered = <M extends SampledMethod>(method: M): M => ({ ...method, tally: memo(method.tally) })

export const ROTARY_DIP = remembered({
  key: 'rotary-dip',
  reading: { name: 'wetting time', unit: 's', worseIs: 'greater' },
  fitsVariables: true,
  outOfLimit: 'slow to wet',
  tally: rotaryDipTally,
} satisfies SampledMethod)

export const DIP_AND_LOOK = remembered({
  key: 'dip-and-look',
  reading: { name: 'coverage', unit: '%', worseIs: 'smaller' },
  fitsVariables: false,
  outOfLimit: 'short of coverage',
  tally: dipAndLookTally,
} satisfies SampledMethod)

export const HOLE_RISE = remembered({
  key: 'plated-hole-rise',
  reading: { name: 'rise', unit: '%', worseIs: 'smaller' },
  fitsVariables: false,
  outOfLimit: 'not risen',
  tally: holeRiseTally,
} satisfies SampledMethod)

export const SOLDER_FLOAT = remembered({
  key: 'solder-float',
  reading: undefined,
  fitsVariables: false,
  outOfLimit: 'damaged',
  tally: (readings: Readings) => outcomeTally(readings, 'sound'),
} satisfies SampledMethod)

export const RECEIVING_CHECK = remembered({
  key: 'receiving-check',
  reading: undefined,
  fitsVariables: false,
  outOfLimit: 'not as ordered',
  tally: receivingTally,
} satisfies SampledMethod)
