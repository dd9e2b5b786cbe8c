import type { Lot } from '@/shared/records/lot'
import { judgeVariables, type VariablesJudgement } from '@/shared/statistics/sampling/variables-plan'
import { memory } from '@/shared/memo'
import type { SampledMethod } from './sampled-method'
import { outcomeOf, type SampleOutcome, type SamplingPlan } from './sampling-plan'
import { joinTallies, nonconforming, type SpecimenTally } from './specimen-tally'
import { demandInputs, sortTests, type SortedTests, type TestDemands } from './test-status'

/** What was found in the sample of a lot, and what it decides. */
export interface LotSampleFound {
  readonly tally: SpecimenTally
  readonly tested: number
  readonly bad: number
  /** Of a double plan, once its first sample is complete. */
  readonly badInFirst?: number
  readonly outcome: SampleOutcome
  /** Under a variables plan: how far the mean lies inside the limit. */
  readonly variables?: VariablesJudgement
}

/** A lot's tests by one method, with all that count taken together. */
export interface TriedLot {
  readonly tests: SortedTests
  readonly tally: SpecimenTally | undefined
  readonly bad: number
}

/** The tests of a lot by one method against the value one specimen is held to. */
export function triedBy(lot: Lot, method: SampledMethod, limit: number, demands: TestDemands): TriedLot {
  if (!lot.tests.some((test) => test.method === method.key)) return UNTRIED
  return knownTries(lot, [method, limit, ...demandInputs(demands)], () => {
    const tests = sortTests(lot, method.key, demands)
    if (tests.standing.length === 0) return { tests, tally: undefined, bad: 0 }
    const tally = joinTallies(
      tests.standing.map((test) => method.tally(test.readings, limit)),
      method.reading?.worseIs ?? 'greater',
    )
    return { tests, tally, bad: nonconforming(tally) }
  })
}
const UNTRIED: TriedLot = { tests: { standing: [], setAside: [] }, tally: undefined, bad: 0 }
const knownTries = memory<Lot, TriedLot>(6)

/** What the lot's sample has come to under a plan; undefined while no test counts. */
export function sampleOf(
  { tally, bad }: TriedLot,
  method: SampledMethod,
  limit: number,
  plan: SamplingPlan,
): LotSampleFound | undefined {
  const tested = tally?.faults.size ?? 0
  if (tally === undefined || tested === 0) return undefined
  if (plan.kind !== 'variables') {
    if (plan.kind !== 'double' || tested < plan.firstSize)
      return { tally, tested, bad, outcome: outcomeOf(plan, tested, bad) }
    const badInFirst = badAmongFirst(plan.firstSize, tally)
    return { tally, tested, bad, badInFirst, outcome: outcomeOf(plan, tested, bad, badInFirst) }
  }
  return { tally, tested, bad, ...variablesOutcome(plan, tally, method, limit) }
}

/** Bad specimens among the first so many, in the order in which they were entered. */
const badAmongFirst = (size: number, { faults }: SpecimenTally): number =>
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
