import { coverageMin, holeRiseMin, wettingTimeMax } from '@/shared/plan/limits/evaluation-solderability'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import type { Lot } from '@/shared/records/lot'
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

/** The limits that specimens of the sampled tests are held to. */
export const sampledLimits = {
  wettingTime: wettingTimeMax,
  dipCoverage: coverageMin,
  holeRise: holeRiseMin,
} as const
export type SampledLimits = Readonly<Record<keyof typeof sampledLimits, Pick<GoverningRequirement, 'value'>>>

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
  /** The value one specimen is held to. */
  readonly limitIn: (limits: SampledLimits) => number
  readonly tally: (readings: Readings, limit: number) => SpecimenTally
}

/** Tallies are kept for as long as their readings are, one for each limit asked about. */
const remembered = <M extends SampledMethod>(method: M): M => ({ ...method, tally: memo(method.tally) })

export const ROTARY_DIP = remembered({
  key: 'rotary-dip',
  reading: { name: 'wetting time', unit: 's', worseIs: 'greater' },
  fitsVariables: true,
  outOfLimit: 'slow to wet',
  limitIn: ({ wettingTime }) => wettingTime.value,
  tally: rotaryDipTally,
} satisfies SampledMethod)

export const DIP_AND_LOOK = remembered({
  key: 'dip-and-look',
  reading: { name: 'coverage', unit: '%', worseIs: 'smaller' },
  fitsVariables: false,
  outOfLimit: 'short of coverage',
  limitIn: ({ dipCoverage }) => dipCoverage.value,
  tally: dipAndLookTally,
} satisfies SampledMethod)

export const HOLE_RISE = remembered({
  key: 'plated-hole-rise',
  reading: { name: 'rise', unit: '%', worseIs: 'smaller' },
  fitsVariables: false,
  outOfLimit: 'not risen',
  limitIn: ({ holeRise }) => holeRise.value,
  tally: holeRiseTally,
} satisfies SampledMethod)

export const SOLDER_FLOAT = remembered({
  key: 'solder-float',
  reading: undefined,
  fitsVariables: false,
  outOfLimit: 'damaged',
  limitIn: () => 0,
  tally: (readings: Readings) => outcomeTally(readings, 'sound'),
} satisfies SampledMethod)

export const RECEIVING_CHECK = remembered({
  key: 'receiving-check',
  reading: undefined,
  fitsVariables: false,
  outOfLimit: 'not as ordered',
  limitIn: () => 0,
  tally: receivingTally,
} satisfies SampledMethod)

const ALL: readonly SampledMethod[] = [ROTARY_DIP, DIP_AND_LOOK, HOLE_RISE, SOLDER_FLOAT, RECEIVING_CHECK]

/** The sampled method of a test, by its key; undefined for a test that is not made on a sample of the lot. */
export const sampledMethod = (key: string): SampledMethod | undefined => ALL.find((one) => one.key === key)

/** Every sampled method that is asked for or was used. */
export function methodsInUse({
  lots,
  needed,
}: {
  readonly lots: readonly Lot[]
  readonly needed: readonly { readonly method: string }[]
}): readonly SampledMethod[] {
  const inUse = new Set([...needed, ...lots.flatMap(({ tests }) => tests)].map(({ method }) => method))
  return ALL.filter(({ key }) => inUse.has(key))
}
