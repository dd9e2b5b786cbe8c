import { testTemperatureToleranceMax } from '@/shared/plan/limits/evaluation-solderability'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { isSolderabilityMethod } from '@/shared/methods/test-methods'
import type { Lot, LotTest } from '@/shared/records/lot'
import { instruments, recordsOf } from '@/shared/rules/record-source'
import { optional, type Inputs } from '@/shared/rules/rule'
import { groupedBy } from '@/shared/grouped-by'
import { curvesOfTest } from '@/shared/wetting/curves-of-test'
import { endsTooSoon, endsUnwetted } from '@/shared/wetting/wetting-curve'
import { conditionOf } from './condition-differences'
import { whyNotCounted } from './counted-tests'
import { sampledLimits, sampledMethod } from './sampled-methods'
import { nonconforming } from './specimen-tally'
import { conditionsFor, type StatedCondition } from './stated-conditions'

/** What decides whether a solderability test counts, and whether it passed. */
export const passingReads = {
  instruments,
  calibrations: recordsOf('calibration', 'calibrations'),
  conditions: optional(testConditions),
  temperatureTolerance: testTemperatureToleranceMax,
  ...sampledLimits,
} as const
export type PassingInputs = Inputs<typeof passingReads>

/** A solderability test that counts, and whether the lot passed it. */
export interface SolderabilityResult {
  /** The day on which it was complete: every condition stated for its method tried, or one of them failed. */
  readonly testedOn: string
  /** The day of the oldest test it rests on, one of each condition stated. */
  readonly restsOn: string
  readonly passed: boolean
}

/**
 * The results of a lot's solderability tests, earliest first; of one day the failed last. A test under other
 * conditions than specified, by an instrument out of calibration, or of curves that cannot be read, is none.
 * A test passes when no specimen fails it; one with bad specimens only where
 * quality accepted the lot afterwards, with that result in view. Nobody's word
 * makes a surface wet that a balance shows unwetted. Where several conditions are
 * stated for a method, its result is passed once each of them is.
 */
export function solderabilityResults(lot: Lot, inputs: PassingInputs): SolderabilityResult[] {
  const single = lot.tests
    .filter(
      (test) =>
        isSolderabilityMethod(test.method) &&
        whyNotCounted(lot, test, inputs) === undefined &&
        isReadable(test),
    )
    .map((test) => ({
      method: test.method,
      condition: conditionOf(lot, test, inputs),
      testedOn: test.testedOn,
      passed: isClean(test, inputs) || (test.method !== 'wetting-balance' && isAcceptedAfter(lot, test)),
    }))
  return [...groupedBy(single, ({ method }) => method)]
    .flatMap(([method, tests]) => completed(tests, conditionsFor(inputs.conditions ?? [], method, lot)))
    .sort(earliestFirst)
}

const earliestFirst = (
  one: Pick<SolderabilityResult, 'testedOn' | 'passed'>,
  other: Pick<SolderabilityResult, 'testedOn' | 'passed'>,
): number =>
  one.testedOn === other.testedOn
    ? Number(other.passed) - Number(one.passed)
    : one.testedOn < other.testedOn
      ? -1
      : 1

interface SingleResult {
  readonly condition: StatedCondition | undefined
  readonly testedOn: string
  readonly passed: boolean
}

/** What a method's tests come to, test by test: failed while the newest under any stated condition is, passed once each has passed. */
function completed(
  tests: readonly SingleResult[],
  stated: readonly StatedCondition[],
): readonly SolderabilityResult[] {
  const newest = new Map<StatedCondition | undefined, SingleResult>()
  return tests.toSorted(earliestFirst).flatMap((test): SolderabilityResult[] => {
    newest.set(test.condition, test)
    const resting = [...newest.values()]
    const failed = resting.findLast(({ passed }) => !passed)
    if (failed) return [{ testedOn: test.testedOn, restsOn: failed.testedOn, passed: false }]
    if (stated.some((condition) => !newest.has(condition))) return []
    const restsOn = resting.map(({ testedOn }) => testedOn).sort()[0]!
    return [{ testedOn: test.testedOn, restsOn, passed: true }]
  })
}

const isAcceptedAfter = ({ disposition }: Lot, { testedOn, readings }: LotTest): boolean =>
  readings.count > 0 && disposition !== null && disposition.verdict !== 'reject' && disposition.on >= testedOn

/** Curves need the dimensions that give them meaning, and the time to wet; every other reading speaks for itself. */
function isReadable(test: LotTest): boolean {
  if (test.method !== 'wetting-balance') return true
  const curves = curvesOfTest(test)
  return (
    typeof curves !== 'string' &&
    curves.length > 0 &&
    (curves.some(endsUnwetted) || !curves.some(endsTooSoon))
  )
}

/** Some specimens, and not one that fails. */
function isClean(test: LotTest, inputs: PassingInputs): boolean {
  const method = sampledMethod(test.method)
  if (!method) {
    const curves = curvesOfTest(test)
    return typeof curves !== 'string' && !curves.some(endsUnwetted)
  }
  const tally = method.tally(test.readings, method.limitIn(inputs))
  return tally.faults.size > 0 && nonconforming(tally) === 0
}
