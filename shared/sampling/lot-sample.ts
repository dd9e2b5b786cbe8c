import type { Lot } from '@/shared/records/lot'
import { judgeVariables, type VariablesJudgement } from '@/shared/statistics/sampling/variables-plan'
import { memory } from '@/shared/memo'
import type { SampledMethod } from '@/shared/lot-tests/sampled-methods'
import { outcomeOf, type SampleOutcome, type SamplingPlan } from './sampling-plan'
import type { StatedCondition } from '@/shared/lot-tests/stated-conditions'
import { joinTallies, nonconforming, type SpecimenTally } from '@/shared/lot-tests/specimen-tally'
import {
  countingKey,
  sortTests,
  type CountingInputs,
  type SortedTests,
} from '@/shared/lot-tests/counted-tests'

/** What was found in the sample of a lot, and what it decides. */
export interface LotSampleFound {
  readonly tally: SpecimenTally
  readonly tested: number
  readonly nonconforming: number
  /** Of a double plan, once its first sample is complete. */
  readonly nonconformingInFirst?: number
  readonly outcome: SampleOutcome
  /** Under a variables plan: how far the mean lies inside the limit. */
  readonly variables?: VariablesJudgement
}

/** A lot's tests by one method, with all that count taken together. */
export interface TestedLot {
  readonly tests: SortedTests
  readonly tally: SpecimenTally | undefined
  readonly nonconforming: number
}

/** The tests of a lot by one method, under one stated condition where several are, against the value one specimen is held to. */
export function testedBy(
  lot: Lot,
  method: SampledMethod,
  limit: number,
  inputs: CountingInputs,
  condition?: StatedCondition,
): TestedLot {
  if (!lot.tests.some((test) => test.method === method.key)) return UNTESTED
  return knownTries(lot, [method, limit, condition, ...countingKey(inputs)], () => {
    const tests = sortTests(lot, method.key, inputs, condition)
    if (tests.counted.length === 0) return { tests, tally: undefined, nonconforming: 0 }
    const tally = joinTallies(
      tests.counted.map((test) => method.tally(test.readings, limit)),
      method.reading?.worseIs ?? 'greater',
    )
    return { tests, tally, nonconforming: nonconforming(tally) }
  })
}
const UNTESTED: TestedLot = { tests: { counted: [], excluded: [] }, tally: undefined, nonconforming: 0 }
const knownTries = memory<Lot, TestedLot>(12)

/** What the lot's sample has come to under a plan; undefined while no test counts. */
export function sampleOf(
  { tally, nonconforming }: TestedLot,
  method: SampledMethod,
  limit: number,
  plan: SamplingPlan,
): LotSampleFound | undefined {
  const tested = tally?.faults.size ?? 0
  if (tally === undefined || tested === 0) return undefined
  if (plan.kind !== 'variables') {
    if (plan.kind !== 'double' || tested < plan.firstSize)
      return { tally, tested, nonconforming, outcome: outcomeOf(plan, tested, nonconforming) }
    const nonconformingInFirst = nonconformingAmongFirst(plan.firstSize, tally)
    return {
      tally,
      tested,
      nonconforming,
      nonconformingInFirst,
      outcome: outcomeOf(plan, tested, nonconforming, nonconformingInFirst),
    }
  }
  return { tally, tested, nonconforming, ...variablesOutcome(plan, tally, method, limit) }
}

/** Bad specimens among the first so many, in the order in which they were entered. */
const nonconformingAmongFirst = (size: number, { faults }: SpecimenTally): number =>
  [...faults.values()].slice(0, size).filter((fault) => fault !== undefined).length

/**
 * A specimen without a reading (never wetted, dewetted, unreadable) rejects a
 * variables sample: there is no number to put in its place.
 */
function variablesOutcome(
  plan: Extract<SamplingPlan, { kind: 'variables' }>,
  tally: SpecimenTally,
  method: SampledMethod,
  limit: number,
): { outcome: SampleOutcome; variables?: VariablesJudgement } {
  const unmeasured = [...tally.faults.values()].some(
    (fault) => fault !== undefined && fault !== 'short of the limit',
  )
  if (unmeasured) return { outcome: { decided: 'rejected' } }
  const readings = [...tally.worstBySpecimen.values()]
  if (!readings.every(Number.isFinite)) return { outcome: { decided: 'rejected' } }
  const missing = plan.sampleSize - readings.length
  if (missing > 0) return { outcome: { decided: undefined, stillToTest: missing } }
  const side = method.reading?.worseIs === 'smaller' ? 'lower' : 'upper'
  if (readings.every((reading) => reading === limit)) {
    return { outcome: { decided: undefined, stillToTest: plan.sampleSize } }
  }
  const variables = judgeVariables(
    { sampleSize: readings.length, acceptabilityConstant: plan.acceptabilityConstant },
    readings,
    { side, value: limit },
  )
  return { outcome: { decided: variables.accepted ? 'accepted' : 'rejected' }, variables }
}
