import { ageingMethod } from '@/shared/materials/ageing-methods'
import { TEST_FLUXES, TEST_SOLDERS } from '@/shared/materials/test-solders'
import type { ValueOf } from '@/shared/plan/parameter'
import type { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { calibrationStanding, type InstrumentFile } from '@/shared/instruments/calibration-status'
import type { Lot, LotTest } from '@/shared/records/lot'
import { isSolderabilityMethod, methodName, needsInstrument } from '@/shared/methods/test-methods'
import { memory } from '@/shared/memo'

/** The conditions a programme specifies for its solderability tests. */
export type SpecifiedConditions = ValueOf<typeof testConditions>

/** What a test is held against before its result counts. */
export interface TestDemands {
  readonly specified: SpecifiedConditions
  readonly temperatureToleranceK: number
  readonly instruments: InstrumentFile
}

/** A lot's tests by one method: those whose result counts, and those set aside with the reason. */
export interface SortedTests {
  readonly standing: readonly LotTest[]
  readonly setAside: readonly { readonly test: LotTest; readonly because: string }[]
}

/**
 * Sorts a lot's tests by one method. A test counts only when its conditions are
 * the specified ones and its instrument was in calibration on its date.
 */
export function sortTests(lot: Lot, method: string, demands: TestDemands): SortedTests {
  const standing: LotTest[] = []
  const setAside: { test: LotTest; because: string }[] = []
  for (const test of lot.tests) {
    if (test.method !== method) continue
    const because = whySetAside(test, demands)
    if (because === undefined) standing.push(test)
    else setAside.push({ test, because })
  }
  return { standing, setAside }
}

/** Why a test's result does not count; undefined when it does. */
export function whySetAside(test: LotTest, demands: TestDemands): string | undefined {
  const { specified, temperatureToleranceK, instruments } = demands
  const inputs = [specified, temperatureToleranceK, instruments.instruments, instruments.calibrations]
  return reasons(test, inputs, () => {
    const unlike = unlikeConditions(test, demands)
    if (unlike.length > 0) return `conditions unlike the specified ones (${unlike.join('; ')})`
    if (test.instrumentId === null && !needsInstrument(test.method)) return undefined
    const standing = calibrationStanding(test.instrumentId, test.testedOn, instruments)
    return standing.stands ? undefined : standing.says
  })
}
const reasons = memory<LotTest, string | undefined>(2)

/**
 * In which respects a test's conditions differ from the specified ones, each as
 * a phrase. Empty when they are alike, or when conditions do not bear on the method.
 */
export function unlikeConditions(
  test: LotTest,
  { specified, temperatureToleranceK }: Pick<TestDemands, 'specified' | 'temperatureToleranceK'>,
): string[] {
  if (!isSolderabilityMethod(test.method)) return []
  const rows = specified.filter(({ method }) => method === test.method)
  if (rows.length === 0) return [`no conditions are specified for ${methodName(test.method)}`]
  const differences = rows.map((row) => differencesFrom(row, test, temperatureToleranceK))
  return differences.reduce((fewest, one) => (one.length < fewest.length ? one : fewest))
}

function differencesFrom(
  row: SpecifiedConditions[number],
  { conditions }: LotTest,
  temperatureToleranceK: number,
): string[] {
  const { alloy, flux, bathTemperatureC, ageing } = conditions
  const differences: string[] = []
  if (alloy !== row.alloy) differences.push(`solder ${named(alloy)}, not ${named(row.alloy)}`)
  if (flux !== row.flux) differences.push(`flux ${named(flux)}, not ${named(row.flux)}`)
  if (ageing !== row.ageing) differences.push(`ageing ${named(ageing)}, not ${named(row.ageing)}`)
  if (typeof bathTemperatureC !== 'number') differences.push('bath temperature not stated')
  else if (!(Math.abs(bathTemperatureC - row.bathTemperatureC) <= temperatureToleranceK)) {
    const asked = formatQuantity(row.bathTemperatureC, '°C')
    differences.push(
      `bath at ${formatQuantity(bathTemperatureC, '°C')}, not ${asked} ± ${formatNumber(temperatureToleranceK)} K`,
    )
  }
  return differences
}

/** A solder, flux or ageing as people call it. */
function named(key: unknown): string {
  if (typeof key !== 'string') return 'not stated'
  const tables: Readonly<Record<string, { readonly label: string }>>[] = [TEST_SOLDERS, TEST_FLUXES]
  const label =
    tables.map((table) => table[key]?.label).find((found) => found !== undefined) ?? ageingMethod(key)?.label
  return label ?? key
}
