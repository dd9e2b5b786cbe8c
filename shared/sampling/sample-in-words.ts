import type { Measured } from '@/shared/rules/finding'
import { measure, count } from '@/shared/rules/measure'
import { formatAgainst, formatNumber, formatQuantity } from '@/shared/quantity/format'
import { exactProportionUpperBound } from '@/shared/statistics/intervals/exact-proportion'
import { whatTheSampleProves, type LotSample } from '@/shared/statistics/sampling/what-the-sample-proves'
import type { LotSampleFound } from './lot-sample'
import type { SampledMethod } from '@/shared/lot-tests/sampled-methods'
import type { Question } from './sampled-question'
import { fractionOf } from '@/shared/plan/limit-fraction'
import type { SamplingInputs } from './sampling-reads'
import { faultCounts, type SpecimenFault } from '@/shared/lot-tests/specimen-tally'
import { memoByText } from '@/shared/memo'

/** "13 specimens (52 places), none nonconforming, longest wetting time 1.8 s". */
export function sampleInWords(sample: LotSampleFound, { method, governing }: Question): string {
  const { tally, tested, nonconforming } = sample
  const places = tally.places > tested ? ` (${tally.places} places)` : ''
  const faults =
    nonconforming === 0
      ? 'none nonconforming'
      : `${nonconforming} nonconforming: ${faultsInWords(tally, method)}`
  const { reading } = method
  if (!reading || tally.worst === undefined) return `${tested} tested${places}, ${faults}`
  const worst = formatAgainst(tally.worst, governing.value, reading.unit).found
  const max = reading.worseIs === 'greater' ? 'longest' : 'least'
  return `${tested} tested${places}, ${faults}, ${max} ${reading.name} ${worst}`
}

function faultsInWords(tally: LotSampleFound['tally'], method: SampledMethod): string {
  const names: Record<SpecimenFault, string> = {
    'non-wetting': 'non-wetting',
    dewetting: 'dewetting',
    'short of the limit': method.outOfLimit,
    'not readable': 'without a readable result',
  }
  return [...faultCounts(tally)].map(([fault, times]) => `${times} ${names[fault]}`).join(', ')
}

/** The same as data. */
export function sampleMeasured(
  { tally, tested, nonconforming, nonconformingInFirst }: LotSampleFound,
  { method }: Question,
): Measured {
  const { reading } = method
  return {
    tested: count(tested, 'pieces'),
    places: count(tally.places),
    nonconforming: count(nonconforming, 'pieces'),
    ...(nonconformingInFirst !== undefined && {
      nonconformingInFirst: count(nonconformingInFirst, 'pieces'),
    }),
    ...Object.fromEntries([...faultCounts(tally)].map(([fault, times]) => [fault, count(times, 'pieces')])),
    ...(reading && tally.worst !== undefined && { worst: measure(tally.worst, reading.unit) }),
  }
}

/** What a sample proved of its lot; of its process where more was tested than the lot holds. A share is a fraction. */
export type LotProof =
  | { readonly of: 'process'; readonly confidence: number; readonly shareAtMost: number }
  | {
      readonly of: 'lot'
      readonly confidence: number
      readonly quantity: number
      readonly nonconformingAtMost: number
      readonly shareAtMost: number
      /** Undefined where nothing nonconforming was found. */
      readonly nonconformingAtLeast: number | undefined
    }

/** What this sample proved, whatever the plan promises on average. */
export function proofOfLot(
  quantity: number,
  { tested, nonconforming }: LotSampleFound,
  inputs: SamplingInputs,
): LotProof {
  const confidence = fractionOf(inputs.confidence)
  if (tested > quantity) {
    const shareAtMost = exactProportionUpperBound({ found: nonconforming, inspected: tested }, confidence)
    return { of: 'process', confidence, shareAtMost }
  }
  const proof = proofOf({ lotSize: quantity, sampleSize: tested, defectives: nonconforming }, confidence)
  return {
    of: 'lot',
    confidence,
    quantity,
    nonconformingAtMost: proof.lotDefectivesAtMost,
    shareAtMost: proof.lotFractionAtMost,
    nonconformingAtLeast: nonconforming > 0 ? proof.lotDefectivesAtLeast : undefined,
  }
}

export function proofInWords(proof: LotProof): string {
  const sure = `${formatNumber(proof.confidence * 100)} % confidence:`
  const share = formatQuantity(proof.shareAtMost * 100, '%', 3)
  if (proof.of === 'process') return `${sure} at most ${share} of what its process makes is nonconforming.`
  const range =
    proof.nonconformingAtLeast === undefined
      ? `at most ${proof.nonconformingAtMost}`
      : `${proof.nonconformingAtLeast} to ${proof.nonconformingAtMost}`
  return `${sure} ${range} of ${proof.quantity} nonconforming (at most ${share}).`
}

/** The same as data. */
export const proofMeasured = (proof: LotProof): Measured => ({
  shownOf: proof.of,
  confidence: measure(proof.confidence * 100, '%'),
  shareAtMost: measure(proof.shareAtMost * 100, '%'),
  ...(proof.of === 'lot' && {
    quantity: count(proof.quantity, 'pieces'),
    nonconformingAtMost: count(proof.nonconformingAtMost, 'pieces'),
    ...(proof.nonconformingAtLeast !== undefined && {
      nonconformingAtLeast: count(proof.nonconformingAtLeast, 'pieces'),
    }),
  }),
})

/** Proofs already computed: lots of one size with the same sample prove the same. */
const proofOf = memoByText(
  2000,
  ({ lotSize, sampleSize, defectives }: LotSample, confidence: number) =>
    `${lotSize} ${sampleSize} ${defectives} ${confidence}`,
  whatTheSampleProves,
)
