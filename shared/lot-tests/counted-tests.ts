import { TEST_FLUXES, TEST_SOLDERS } from '@/shared/materials/test-solders'
import { calibrationStatus, type InstrumentFile } from '@/shared/instruments/calibration-status'
import { memory } from '@/shared/memo'
import { rotaryDip } from '@/shared/methods/rotary-dip'
import { solderFloat } from '@/shared/methods/solder-float'
import { needsInstrument } from '@/shared/methods/test-methods'
import {
  floatTemperatureMin,
  floatTimeMin,
  testTemperatureToleranceMax,
  WETTING_TIME_HOLDS_AT as HOLDS_AT,
  wettingTimeMax,
} from '@/shared/plan/limits/evaluation-solderability'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import type { Lot, LotTest } from '@/shared/records/lot'
import { instruments, lots, recordsOf } from '@/shared/rules/record-source'
import {
  conditionOf,
  differenceInWords,
  unlikeConditions,
  type ConditionInputs,
} from './condition-differences'
import type { StatedCondition } from './stated-conditions'

/** Lots, and what decides whether a test's result counts. */
export const countingReads = {
  lots,
  instruments,
  calibrations: recordsOf('calibration', 'calibrations'),
  conditions: testConditions,
  temperatureTolerance: testTemperatureToleranceMax,
  wettingTime: wettingTimeMax,
  floatTemperature: floatTemperatureMin,
  floatTime: floatTimeMin,
} as const

/** The same as a rule is given it. */
export interface CountingInputs extends ConditionInputs, InstrumentFile {
  readonly wettingTime: Pick<GoverningRequirement, 'kind' | 'value'>
  /** Not looked at by rules that look at solderability alone. */
  readonly floatTemperature?: Pick<GoverningRequirement, 'value'>
  readonly floatTime?: Pick<GoverningRequirement, 'value'>
}

/** A lot's tests by one method: those whose result counts, and those set aside with the reason. */
export interface SortedTests {
  readonly counted: readonly LotTest[]
  readonly excluded: readonly { readonly test: LotTest; readonly because: string }[]
}

/** Why a test's result does not count: a phrase about its conditions, about the test, or about its instrument by name. */
export interface NotCounted {
  readonly of: 'conditions' | 'test' | 'instrument'
  readonly message: string
}

/**
 * Sorts a lot's tests by one method, of those under one stated condition where several are stated. A test
 * counts only when its conditions are the specified ones, no easier than its limit supposes, and its
 * instrument was in calibration on its date. One that meets no stated condition is set aside with the first
 * of those it comes nearest to.
 */
export function sortTests(
  lot: Lot,
  method: string,
  inputs: CountingInputs,
  condition?: StatedCondition,
): SortedTests {
  const counted: LotTest[] = []
  const excluded: { test: LotTest; because: string }[] = []
  for (const test of lot.tests) {
    if (test.method !== method) continue
    if (condition !== undefined && conditionOf(lot, test, inputs) !== condition) continue
    const because = whyNotCounted(lot, test, inputs)
    if (because === undefined) counted.push(test)
    else excluded.push({ test, because: because.message })
  }
  return { counted, excluded }
}

/** Why a test's result does not count; undefined when it does. */
export function whyNotCounted(lot: Lot, test: LotTest, inputs: CountingInputs): NotCounted | undefined {
  return reasons(test, [lot.kind, lot.part, ...countingKey(inputs)], () => {
    const unlike = unlikeConditions(lot, test, inputs)
    if (unlike.length > 0) {
      const message = `conditions unlike the specified ones (${unlike.map(differenceInWords).join('; ')})`
      return { of: 'conditions', message }
    }
    const easier = easierThanItsLimit(test, inputs)
    if (easier !== undefined) return { of: 'conditions', message: easier }
    if (test.instrumentId === null && !needsInstrument(test.method)) return undefined
    const counted = calibrationStatus(test.instrumentId, test.testedOn, inputs)
    if (counted.stands) return undefined
    return { of: counted.instrument ? 'instrument' : 'test', message: counted.message }
  })
}
const reasons = memory<LotTest, NotCounted | undefined>(4)

/** All that decides whether tests count, for a memory to compare. */
export const countingKey = (inputs: CountingInputs): readonly unknown[] => [
  ...[
    inputs.conditions,
    inputs.temperatureTolerance.value,
    inputs.wettingTime.kind,
    inputs.wettingTime.value,
  ],
  ...[inputs.floatTemperature?.value, inputs.floatTime?.value, inputs.instruments, inputs.calibrations],
]

/**
 * Why a test was easier than its limit supposes, as a phrase; undefined when it was not. The default
 * wetting time is one of a bath, a solder and a flux; a time that the programme states is taken as
 * stated for its own conditions.
 */
function easierThanItsLimit(test: LotTest, inputs: CountingInputs): string | undefined {
  if (test.method === rotaryDip.key && inputs.wettingTime.kind === 'default') return easierDip(test, inputs)
  if (test.method === solderFloat.key) return easierFloat(test, inputs)
  return undefined
}

function easierDip(
  { conditions }: LotTest,
  { wettingTime, temperatureTolerance }: CountingInputs,
): string | undefined {
  const { alloy, flux, bathTemperatureC } = conditions
  const hotter =
    typeof bathTemperatureC === 'number' &&
    bathTemperatureC > HOLDS_AT.bathTemperatureC + temperatureTolerance.value
  const otherSolder = !HOLDS_AT.alloys.some((one) => one === alloy)
  const otherFlux = flux !== HOLDS_AT.flux
  if (!hotter && !otherSolder && !otherFlux) return undefined
  const asked = `${formatQuantity(HOLDS_AT.bathTemperatureC, '°C')} in ${HOLDS_AT.alloys.map((one) => TEST_SOLDERS[one].label).join(' or ')} with ${TEST_FLUXES[HOLDS_AT.flux].label.toLowerCase()}`
  return `the limit of ${formatQuantity(wettingTime.value, 's')} holds at ${asked}, and none is stated for these conditions`
}

function easierFloat(
  { conditions }: LotTest,
  { floatTemperature, floatTime }: CountingInputs,
): string | undefined {
  if (!floatTemperature || !floatTime) return undefined
  const { bathTemperatureC, floatS } = conditions
  if (typeof bathTemperatureC !== 'number' || typeof floatS !== 'number')
    return 'temperature or time of the float not stated'
  if (bathTemperatureC >= floatTemperature.value && floatS >= floatTime.value) return undefined
  return `floated at ${formatQuantity(bathTemperatureC, '°C')} for ${formatQuantity(floatS, 's')}, less than ${formatQuantity(floatTemperature.value, '°C')} for ${formatQuantity(floatTime.value, 's')}`
}
