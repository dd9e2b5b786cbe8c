import type { Lot } from '@/shared/records/lot'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import type { Facts } from '@/shared/rules/facts'
import { inputsOf } from '@/shared/rules/inputs-of'
import type { Inputs } from '@/shared/rules/rule'
import type { InspectionStatus } from '@/shared/statistics/sampling/switching'
import { askedOf, sampledLimits, sampledMethods } from './asked-methods'
import type { LotSampleFound } from './lot-sample'
import { seriesOf, type SamplingContext } from './lot-sampling'
import { labelOf } from './test-asked'
import { riskInWords } from './plan-risk'
import { proofInWords, proofOfLot } from './sample-in-words'
import { planInWords, type SamplingPlan } from './sampling-plan'
import { contextFrom, samplingReads } from './sampling-reads'

const reads = { ...samplingReads, ...sampledLimits } as const
type SamplingSpecified = Inputs<typeof reads>

/** How one lot is sampled under one method and stated condition, for its page and for whoever plans the test. */
export interface SamplingOfLot {
  readonly method: string
  readonly label: string
  /** The plan of the evaluation asks for it. */
  readonly asked: boolean
  readonly inspection: InspectionStatus
  readonly plan: SamplingPlan
  readonly planMessage: string
  readonly riskMessage: string
  readonly sample: LotSampleFound | undefined
  /** What the sample proves of this lot; undefined while nothing counts. */
  readonly proofMessage: string | undefined
}

/**
 * What the sampling rules read, as specified; undefined while something they
 * need is not specified yet (level, acceptable quality level, conditions, parts).
 */
export const samplingSpecified = (facts: Facts): SamplingSpecified | undefined => inputsOf(reads, facts)

/** The settings of a planner that tries lot sizes before any lot is there. */
export function samplingContextOf(facts: Facts): SamplingContext | undefined {
  const specified = samplingSpecified(facts)
  return specified && contextFrom(specified)
}

/** Every sampled test asked of a lot or made on it; empty while the sampling is not specified. */
export function samplingOfLot(facts: Facts, lot: Pick<Lot, 'id'>): SamplingOfLot[] {
  const inputs = samplingSpecified(facts)
  if (!inputs) return []
  const isAsked = askedOf(inputs.needed)
  const context = contextFrom(inputs)
  return sampledMethods(inputs).flatMap(({ method, limit }) => {
    return seriesOf(inputs.lots, method, limit, context).flatMap(({ lots, condition, stated }) => {
      const sampled = lots.find((one) => one.lot.id === lot.id)
      if (!sampled) return []
      const asked = isAsked(sampled.lot, method.key)
      const used = sampled.tests.counted.length + sampled.tests.excluded.length > 0
      if (!asked && !used) return []
      const { plan, sample, inspection } = sampled
      return [
        {
          method: method.key,
          label: labelOf(TEST_METHODS[method.key].label, condition, stated),
          asked,
          inspection,
          plan,
          planMessage: planInWords(plan),
          riskMessage: riskInWords(plan),
          sample,
          proofMessage: sample && proofInWords(proofOfLot(sampled.lot.quantity, sample, inputs)),
        },
      ]
    })
  })
}
