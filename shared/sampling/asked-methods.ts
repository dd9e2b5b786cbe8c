import type { GoverningRequirement } from '@/shared/plan/requirement'
import { coverageMin, holeRiseMin, wettingTimeMax } from '@/shared/plan/limits/evaluation-solderability'
import type { Lot } from '@/shared/records/lot'
import { kindAndPart } from '@/shared/records/lot-identity'
import {
  DIP_AND_LOOK,
  HOLE_RISE,
  RECEIVING_CHECK,
  ROTARY_DIP,
  SOLDER_FLOAT,
  type SampledMethod,
} from './sampled-method'

/** The limits that specimens of the sampled tests are held to. */
export const sampledLimits = {
  wettingTime: wettingTimeMax,
  dipCoverage: coverageMin,
  holeRise: holeRiseMin,
} as const

/** Every sampled method that is asked for or was used, with the value one specimen is held to. */
export function sampledMethods(inputs: {
  readonly lots: readonly Lot[]
  readonly needed: readonly { readonly method: string }[]
  readonly wettingTime: Pick<GoverningRequirement, 'value'>
  readonly dipCoverage: Pick<GoverningRequirement, 'value'>
  readonly holeRise: Pick<GoverningRequirement, 'value'>
}): readonly { readonly method: SampledMethod; readonly limit: number }[] {
  const inUse = new Set([
    ...inputs.needed.map(({ method }) => method),
    ...inputs.lots.flatMap(({ tests }) => tests.map(({ method }) => method)),
  ] as string[])
  return allMethods(inputs).filter(({ method }) => inUse.has(method.key))
}

const allMethods = (limits: {
  readonly wettingTime: Pick<GoverningRequirement, 'value'>
  readonly dipCoverage: Pick<GoverningRequirement, 'value'>
  readonly holeRise: Pick<GoverningRequirement, 'value'>
}): readonly { readonly method: SampledMethod; readonly limit: number }[] => [
  { method: ROTARY_DIP, limit: limits.wettingTime.value },
  { method: DIP_AND_LOOK, limit: limits.dipCoverage.value },
  { method: HOLE_RISE, limit: limits.holeRise.value },
  { method: SOLDER_FLOAT, limit: 0 },
  { method: RECEIVING_CHECK, limit: 0 },
]

const SAMPLED: readonly string[] = [ROTARY_DIP, DIP_AND_LOOK, HOLE_RISE, SOLDER_FLOAT, RECEIVING_CHECK].map(
  ({ key }) => key,
)
/** Whether a test, by its key, is made on a sample of the lot. */
export const isSampled = (method: string): boolean => SAMPLED.includes(method)

/** Whether the plan asks a method of a lot's part. */
export function askedOf(
  needed: readonly { readonly kind: string; readonly part: string; readonly method: string }[],
): (lot: { readonly kind: string; readonly part: string }, method: string) => boolean {
  const asked = new Set(needed.map((row) => `${kindAndPart(row)}\n${row.method}`))
  return (lot, method) => asked.has(`${kindAndPart(lot)}\n${method}`)
}
