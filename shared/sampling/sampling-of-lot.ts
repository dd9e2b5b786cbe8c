import { sampledLimits } from '@/shared/lot-tests/sampled-methods'
import { testLabel } from '@/shared/lot-tests/tests-asked'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import type { Lot } from '@/shared/records/lot'
import type { Facts } from '@/shared/rules/facts'
import { inputsOf } from '@/shared/rules/inputs-of'
import type { Inputs } from '@/shared/rules/rule'
import type { InspectionStatus } from '@/shared/statistics/sampling/switching'
import type { LotSampleFound } from './lot-sample'
import { riskInWords } from './plan-risk'
import { proofInWords, proofOfLot } from './sample-in-words'
import { allSeries } from './sampled-series'
import { planInWords, type SamplingPlan } from './sampling-plan'
import { samplingReads } from './sampling-reads'

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

/** Every sampled test asked of a lot or made on it; empty while the sampling is not specified. */
export function samplingOfLot(facts: Facts, lot: Pick<Lot, 'id'>): SamplingOfLot[] {
  const inputs = samplingSpecified(facts)
  if (!inputs) return []
  return allSeries(inputs).flatMap(({ method: { key }, lots }) =>
    lots
      .filter((one) => one.lot.id === lot.id)
      .filter(({ asked, tests }) => asked || tests.counted.length + tests.excluded.length > 0)
      .map(({ lot: { quantity }, test, asked, inspection, plan, sample }) => ({
        method: key,
        label: testLabel(TEST_METHODS[key].label, test),
        asked,
        inspection,
        plan,
        planMessage: planInWords(plan),
        riskMessage: riskInWords(plan),
        sample,
        proofMessage: sample && proofInWords(proofOfLot(quantity, sample, inputs)),
      })),
  )
}
