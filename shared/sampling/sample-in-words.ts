import type { Measured } from '@/shared/rules/finding'
import { measure, count } from '@/shared/rules/measure'
import { formatAgainst, formatNumber, formatQuantity } from '@/shared/quantity/format'
import { exactProportionUpperBound } from '@/shared/statistics/intervals/exact-proportion'
import { whatTheSampleProves, type LotSample } from '@/shared/statistics/sampling/what-the-sample-proves'
import type { LotSampleFound } from './lot-sample'
import type { SampledMethod } from './sampled-method'
import type { Question } from './sampled-question'
import { fractionOf, type SamplingInputs } from './sampling-reads'
import { faultCounts, type SpecimenFault } from './specimen-tally'
import { memoByText } from '@/shared/memo'

/** "13 specimens (52 places), none bad, longest wetting time 1.8 s". */
export function sampleInWords(sample: LotSampleFound, { method, ruling }: Question): string {
  const { tally, tested, bad } = sample
  const places = tally.places > tested ? ` (${tally.places} places)` : ''
  const faults = bad === 0 ? 'none bad' : `${bad} bad: ${faultsInWords(tally, method)}`
  const { reading } = method
  if (!reading || tally.worst === undefined) return `${tested} tested${places}, ${faults}`
  const worst = formatAgainst(tally.worst, ruling.value, reading.unit).found
  const most = reading.worseIs === 'greater' ? 'longest' : 'least'
  return `${tested} tested${places}, ${faults}, ${most} ${reading.name} ${worst}`
}

function faultsInWords(tally: LotSampleFound['tally'], method: SampledMethod): string {
  const names: Record<SpecimenFault, string> = {
    'non-wetting': 'non-wetting',
    dewetting: 'dewetting',
    'short of the limit': method.shortfall,
    'not readable': 'without a readable result',
  }
  return [...faultCounts(tally)].map(([fault, times]) => `${times} ${names[fault]}`).join(', ')
}

/** The same as data. */
export function sampleMeasured(
  { tally, tested, bad, badInFirst }: LotSampleFound,
  { method }: Question,
): Measured {
  const { reading } = method
  return {
    tested: count(tested, 'pieces'),
    places: count(tally.places),
    bad: count(bad, 'pieces'),
    ...(badInFirst !== undefined && { badInFirst: count(badInFirst, 'pieces') }),
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
      readonly badAtMost: number
      readonly shareAtMost: number
      /** Undefined where nothing bad was found. */
      readonly badAtLeast: number | undefined
    }

/** What this sample proved, whatever the plan promises on average. */
export function proofOfLot(
  quantity: number,
  { tested, bad }: LotSampleFound,
  inputs: SamplingInputs,
): LotProof {
  const confidence = fractionOf(inputs.confidence)
  if (tested > quantity) {
    const shareAtMost = exactProportionUpperBound({ found: bad, inspected: tested }, confidence)
    return { of: 'process', confidence, shareAtMost }
  }
  const proof = proofOf({ lotSize: quantity, sampleSize: tested, defectives: bad }, confidence)
  return {
    of: 'lot',
    confidence,
    quantity,
    badAtMost: proof.lotDefectivesAtMost,
    shareAtMost: proof.lotFractionAtMost,
    badAtLeast: bad > 0 ? proof.lotDefectivesAtLeast : undefined,
  }
}

export function proofInWords(proof: LotProof): string {
  const sure = `${formatNumber(proof.confidence * 100)} % confidence:`
  const share = formatQuantity(proof.shareAtMost * 100, '%', 3)
  if (proof.of === 'process') return `${sure} at most ${share} of what its process makes is nonconforming.`
  const range =
    proof.badAtLeast === undefined
      ? `at most ${proof.badAtMost}`
      : `${proof.badAtLeast} to ${proof.badAtMost}`
  return `${sure} ${range} of ${proof.quantity} nonconforming (at most ${share}).`
}

/** The same as data. */
export const proofMeasured = (proof: LotProof): Measured => ({
  shownOf: proof.of,
  confidence: measure(proof.confidence * 100, '%'),
  shareAtMost: measure(proof.shareAtMost * 100, '%'),
  ...(proof.of === 'lot' && {
    quantity: count(proof.quantity, 'pieces'),
    badAtMost: count(proof.badAtMost, 'pieces'),
    ...(proof.badAtLeast !== undefined && { badAtLeast: count(proof.badAtLeast, 'pieces') }),
  }),
})

/** Proofs already computed: lots of one size with the same sample prove the same. */
const proofOf = memoByText(
  2000,
  ({ lotSize, sampleSize, defectives }: LotSample, confidence: number) =>
    `${lotSize} ${sampleSize} ${defectives} ${confidence}`,
  whatTheSampleProves,
)
