import { ageingMethod } from '@/shared/materials/ageing-methods'
import { TEST_FLUXES, TEST_SOLDERS } from '@/shared/materials/test-solders'
import type { ValueOf } from '@/shared/plan/parameter'
import type { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { calibrationStatus, type InstrumentFile } from '@/shared/instruments/calibration-status'
import type { Lot, LotTest } from '@/shared/records/lot'
import { isSolderabilityMethod, methodName, needsInstrument } from '@/shared/methods/test-methods'
import { memory } from '@/shared/memo'
import { easierThanItsLimit, type LimitConditions } from './limit-conditions'
import type { Measured } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'

/** The conditions a programme specifies for its solderability tests. */
export type SpecifiedConditions = ValueOf<typeof testConditions>

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
 * Sorts a lot's tests by one method. A test counts only when its conditions are the specified ones,
 * no easier than its limit supposes, and its instrument was in calibration on its date.
 */
export function sortTests(lot: Lot, method: string, demands: TestDemands): SortedTests {
  const counted: LotTest[] = []
  const excluded: { test: LotTest; because: string }[] = []
  for (const test of lot.tests) {
    if (test.method !== method) continue
    const because = whyTailoredOut(test, demands)
    if (because === undefined) counted.push(test)
    else excluded.push({ test, because: because.message })
  }
  return { counted, excluded }
}

/** Why a test's result does not count; undefined when it does. */
export function whyTailoredOut(test: LotTest, demands: TestDemands): TailoredOut | undefined {
  const { instruments } = demands
  return reasons(test, demandInputs(demands), () => {
    const unlike = unlikeConditions(test, demands)
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
  test: LotTest,
  { specified, temperatureToleranceK }: Pick<TestDemands, 'specified' | 'temperatureToleranceK'>,
): ConditionDifference[] {
  if (!isSolderabilityMethod(test.method)) return []
  const rows = specified.filter(({ method }) => method === test.method)
  if (rows.length === 0) return [{ of: 'specification', method: test.method }]
  const differences = rows.map((row) => differencesFrom(row, test, temperatureToleranceK))
  return differences.reduce((fewest, one) => (one.length < fewest.length ? one : fewest))
}

function differencesFrom(
  row: SpecifiedConditions[number],
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
