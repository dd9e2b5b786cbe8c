import { formatAgainst, formatNumber, formatQuantity } from '@/shared/quantity/format'
import { exactProportionUpperBound } from '@/shared/statistics/intervals/exact-proportion'
import {
  whatTheSampleProves,
  type LotSample,
  type Proof,
} from '@/shared/statistics/sampling/what-the-sample-proves'
import type { LotSampleFound } from './lot-sample'
import type { SampledMethod } from './sampled-method'
import type { Question } from './sampled-question'
import { fractionOf, type SamplingInputs } from './sampling-reads'
import { faultCounts, type SpecimenFault } from './specimen-tally'

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
  return [...faultCounts(tally)].map(([fault, count]) => `${count} ${names[fault]}`).join(', ')
}

/** What this sample proved, whatever the plan promises on average. */
export function proofInWords(
  quantity: number,
  { tested, bad }: LotSampleFound,
  inputs: SamplingInputs,
): string {
  const confidence = fractionOf(inputs.confidence)
  const sure = `With ${formatNumber(confidence * 100)} % confidence`
  if (tested > quantity) {
    const share = exactProportionUpperBound({ found: bad, inspected: tested }, confidence)
    return `${sure} its process makes at most ${formatQuantity(share * 100, '%', 3)} bad.`
  }
  const proof = proofOf({ lotSize: quantity, sampleSize: tested, defectives: bad }, confidence)
  const atLeast = bad > 0 ? `, and as surely at least ${proof.lotDefectivesAtLeast}` : ''
  return `${sure} at most ${proof.lotDefectivesAtMost} of the ${quantity} are bad (${formatQuantity(proof.lotFractionAtMost * 100, '%', 3)})${atLeast}.`
}

/** Proofs already computed: lots of one size with the same sample prove the same. */
const proofs = new Map<string, Proof>()
function proofOf(sample: LotSample, confidence: number): Proof {
  const key = `${sample.lotSize} ${sample.sampleSize} ${sample.defectives} ${confidence}`
  const proof = proofs.get(key) ?? whatTheSampleProves(sample, confidence)
  if (proofs.size > 2000) proofs.clear()
  proofs.set(key, proof)
  return proof
}
