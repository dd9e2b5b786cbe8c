import {
  coverageMin,
  holeRiseMin,
  testTemperatureToleranceMax,
  wettingTimeMax,
} from '@/shared/plan/limits/evaluation-solderability'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { isSolderabilityMethod, type SolderabilityMethod } from '@/shared/methods/test-methods'
import type { Lot, LotTest } from '@/shared/records/lot'
import { instruments, recordsOf } from '@/shared/rules/record-source'
import { optional, type Inputs } from '@/shared/rules/rule'
import { curvesOfTest } from '@/shared/wetting/curves-of-test'
import { endsUnwetted } from '@/shared/wetting/wetting-curve'
import { DIP_AND_LOOK, HOLE_RISE, ROTARY_DIP, type SampledMethod } from './sampled-method'
import { nonconforming } from './specimen-tally'
import { whyTailoredOut } from './test-status'

/** What decides whether a solderability test counts, and whether it passed. */
export const passingReads = {
  instruments,
  calibrations: recordsOf('calibration', 'calibrations'),
  conditions: optional(testConditions),
  temperatureTolerance: testTemperatureToleranceMax,
  wettingTime: wettingTimeMax,
  coverage: coverageMin,
  holeRise: holeRiseMin,
} as const
export type PassingInputs = Inputs<typeof passingReads>

/** A solderability test that counts, and whether the lot passed it. */
export interface SolderabilityResult {
  readonly testedOn: string
  readonly passed: boolean
}

/**
 * The results of a lot's solderability tests, earliest first; of one day the failed last. A test under other
 * conditions than specified, by an instrument out of calibration, or of curves that cannot be read, is none.
 * A test passes when no specimen fails it; one with bad specimens only where
 * quality accepted the lot afterwards, with that result in view. Nobody's word
 * makes a surface wet that a balance shows unwetted.
 */
export function solderabilityResults(lot: Lot, inputs: PassingInputs): SolderabilityResult[] {
  const demands = {
    specified: inputs.conditions ?? [],
    temperatureToleranceK: inputs.temperatureTolerance.value,
    wettingTime: inputs.wettingTime,
    instruments: inputs,
  }
  return lot.tests
    .filter(
      (test) =>
        isSolderabilityMethod(test.method) && whyTailoredOut(test, demands) === undefined && isReadable(test),
    )
    .map((test) => ({
      testedOn: test.testedOn,
      passed: isClean(test, inputs) || (test.method !== 'wetting-balance' && isAcceptedAfter(lot, test)),
    }))
    .sort((one, other) =>
      one.testedOn === other.testedOn
        ? Number(other.passed) - Number(one.passed)
        : one.testedOn < other.testedOn
          ? -1
          : 1,
    )
}

const isAcceptedAfter = ({ disposition }: Lot, { testedOn, readings }: LotTest): boolean =>
  readings.count > 0 && disposition !== null && disposition.verdict !== 'reject' && disposition.on >= testedOn

/** Curves need the dimensions that give them meaning; every other reading speaks for itself. */
function isReadable(test: LotTest): boolean {
  if (test.method !== 'wetting-balance') return true
  const curves = curvesOfTest(test)
  return typeof curves !== 'string' && curves.length > 0
}

/** Some specimens, and not one that fails. */
function isClean(test: LotTest, inputs: PassingInputs): boolean {
  const method = test.method as SolderabilityMethod
  if (method === 'wetting-balance') {
    const curves = curvesOfTest(test)
    return typeof curves !== 'string' && !curves.some(endsUnwetted)
  }
  const [how, limit] = heldTo(method, inputs)
  const tally = how.tally(test.readings, limit)
  return tally.faults.size > 0 && nonconforming(tally) === 0
}

function heldTo(
  method: Exclude<SolderabilityMethod, 'wetting-balance'>,
  { wettingTime, coverage, holeRise }: PassingInputs,
): readonly [SampledMethod, number] {
  switch (method) {
    case 'rotary-dip':
      return [ROTARY_DIP, wettingTime.value]
    case 'dip-and-look':
      return [DIP_AND_LOOK, coverage.value]
    case 'plated-hole-rise':
      return [HOLE_RISE, holeRise.value]
  }
}
