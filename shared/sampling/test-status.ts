import { ageingMethod } from '@/shared/materials/ageing-methods'
import { TEST_FLUXES, TEST_SOLDERS } from '@/shared/materials/test-solders'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { calibrationStatus, type InstrumentFile } from '@/shared/instruments/calibration-status'
import type { Lot, LotTest } from '@/shared/records/lot'
import { isSolderabilityMethod, methodName, needsInstrument } from '@/shared/methods/test-methods'
import { memory } from '@/shared/memo'
import { easierThanItsLimit, type LimitConditions } from './limit-conditions'
import { conditionsFor, type SpecifiedConditions, type StatedCondition } from './stated-conditions'
import type { Measured } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'

/** What a test is held against before its result counts. */
export interface TestDemands extends LimitConditions {
  readonly specified: SpecifiedConditions
  readonly instruments: InstrumentFile
}

/** A lot's tests by one method: those whose result counts, and those set aside with the reason. */
export interface SortedTests {
  readonly counted: readonly LotTest[]
  readonly excluded: readonly { readonly test: LotTest; readonly because: string }[]
}

/** Why a test's result does not count: a phrase about its conditions, about the test, or about its instrument by name. */
export interface TailoredOut {
  readonly of: 'conditions' | 'test' | 'instrument'
  readonly message: string
}

/** One respect in which a test's conditions differ from the specified ones; what was found and asked by key or number. */
export type ConditionDifference =
  | { readonly of: 'specification'; readonly method: string }
  | {
      readonly of: 'alloy' | 'flux' | 'ageing'
      readonly found: string | undefined
      readonly asked: string
    }
  | {
      readonly of: 'bath'
      readonly foundC: number | undefined
      readonly askedC: number
      readonly toleranceK: number
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
  demands: TestDemands,
  condition?: StatedCondition,
): SortedTests {
  const counted: LotTest[] = []
  const excluded: { test: LotTest; because: string }[] = []
  for (const test of lot.tests) {
    if (test.method !== method) continue
    if (condition !== undefined && conditionOf(lot, test, demands) !== condition) continue
    const because = whyTailoredOut(lot, test, demands)
    if (because === undefined) counted.push(test)
    else excluded.push({ test, because: because.message })
  }
  return { counted, excluded }
}

/** Why a test's result does not count; undefined when it does. */
export function whyTailoredOut(lot: Lot, test: LotTest, demands: TestDemands): TailoredOut | undefined {
  const { instruments } = demands
  return reasons(test, [lot.kind, lot.part, ...demandInputs(demands)], () => {
    const unlike = unlikeConditions(lot, test, demands)
    if (unlike.length > 0) {
      const message = `conditions unlike the specified ones (${unlike.map(differenceInWords).join('; ')})`
      return { of: 'conditions', message }
    }
    const easier = easierThanItsLimit(test, demands)
    if (easier !== undefined) return { of: 'conditions', message: easier }
    if (test.instrumentId === null && !needsInstrument(test.method)) return undefined
    const counted = calibrationStatus(test.instrumentId, test.testedOn, instruments)
    if (counted.stands) return undefined
    return { of: counted.instrument ? 'instrument' : 'test', message: counted.message }
  })
}
const reasons = memory<LotTest, TailoredOut | undefined>(4)

/** All that demands are made of, for a memory to compare. */
export const demandInputs = ({
  specified,
  temperatureToleranceK,
  wettingTime,
  float,
  instruments,
}: TestDemands): readonly unknown[] => [
  ...[specified, temperatureToleranceK, wettingTime.kind, wettingTime.value, float?.minC, float?.minS],
  ...[instruments.instruments, instruments.calibrations],
]

/**
 * In which respects a test's conditions differ from the specified ones. Empty when they are alike, or when conditions do not bear on the method.
 */
export function unlikeConditions(
  lot: Pick<Lot, 'kind' | 'part'>,
  test: LotTest,
  demands: ConditionDemands,
): ConditionDifference[] {
  if (!isSolderabilityMethod(test.method)) return []
  const nearest = conditionOf(lot, test, demands)
  return nearest
    ? differencesFrom(nearest, test, demands.temperatureToleranceK)
    : [{ of: 'specification', method: test.method }]
}

/** What the conditions of a test are held against. */
export type ConditionDemands = Pick<TestDemands, 'specified' | 'temperatureToleranceK'>

/** The stated condition that a test was made under, or comes nearest to, the first of several; undefined when none is stated for it. */
export function conditionOf(
  lot: Pick<Lot, 'kind' | 'part'>,
  test: LotTest,
  { specified, temperatureToleranceK }: ConditionDemands,
): StatedCondition | undefined {
  const stated = conditionsFor(specified, test.method, lot)
  if (stated.length < 2) return stated[0]
  const { bathTemperatureC: foundC } = test.conditions
  const distance = (row: StatedCondition): number =>
    differencesFrom(row, test, temperatureToleranceK).length * 1000 +
    (typeof foundC === 'number' ? Math.abs(foundC - row.bathTemperatureC) : 0)
  return stated.reduce((nearest, row) => (distance(nearest) <= distance(row) ? nearest : row))
}

function differencesFrom(
  row: StatedCondition,
  { conditions }: LotTest,
  toleranceK: number,
): ConditionDifference[] {
  const keys = (['alloy', 'flux', 'ageing'] as const).flatMap((of): ConditionDifference[] => {
    const [found, asked] = [conditions[of], row[of]]
    return found === asked ? [] : [{ of, found: typeof found === 'string' ? found : undefined, asked }]
  })
  const { bathTemperatureC } = conditions
  const foundC = typeof bathTemperatureC === 'number' ? bathTemperatureC : undefined
  const askedC = row.bathTemperatureC
  const near = foundC !== undefined && Math.abs(foundC - askedC) <= toleranceK
  return near ? keys : [...keys, { of: 'bath', foundC, askedC, toleranceK }]
}

const CONDITION_WORD = { alloy: 'solder', flux: 'flux', ageing: 'ageing' } as const

/** A difference as a phrase: "solder Sn60Pb40, not Sn63Pb37". */
export function differenceInWords(difference: ConditionDifference): string {
  switch (difference.of) {
    case 'specification':
      return `no conditions are specified for ${methodName(difference.method)}`
    case 'bath': {
      const { foundC, askedC, toleranceK } = difference
      if (foundC === undefined) return 'bath temperature not stated'
      return `bath at ${formatQuantity(foundC, '°C')}, not ${formatQuantity(askedC, '°C')} ± ${formatNumber(toleranceK)} K`
    }
    case 'alloy':
    case 'flux':
    case 'ageing':
      return `${CONDITION_WORD[difference.of]} ${named(difference.found)}, not ${named(difference.asked)}`
  }
}

/** The same as data. */
export function differenceMeasured(difference: ConditionDifference): Measured {
  switch (difference.of) {
    case 'specification':
      return { conditions: 'not specified' }
    case 'bath': {
      const { foundC, askedC, toleranceK } = difference
      return {
        bath: foundC === undefined ? 'not stated' : measure(foundC, '°C'),
        bathAsked: measure(askedC, '°C'),
        bathTolerance: measure(toleranceK, 'K'),
      }
    }
    case 'alloy':
    case 'flux':
    case 'ageing':
      return {
        [difference.of]: difference.found ?? 'not stated',
        [`${difference.of}Asked`]: difference.asked,
      }
  }
}

/** A solder, flux or ageing as people call it. */
function named(key: string | undefined): string {
  if (key === undefined) return 'not stated'
  const tables: Readonly<Record<string, { readonly label: string }>>[] = [TEST_SOLDERS, TEST_FLUXES]
  const label =
    tables.map((table) => table[key]?.label).find((found) => found !== undefined) ?? ageingMethod(key)?.label
  return label ?? key
}
