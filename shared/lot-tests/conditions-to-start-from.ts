import type { Cell } from '@/shared/columns/column'
import { solderFloat } from '@/shared/methods/solder-float'
import type { TestMethod } from '@/shared/methods/test-method'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import type { Lot } from '@/shared/records/lot'
import type { Facts } from '@/shared/rules/facts'
import { inputsOf } from '@/shared/rules/inputs-of'
import { conditionOf } from './condition-differences'
import { countingReads } from './counted-tests'
import { conditionInWords, conditionsFor, type SpecifiedConditions } from './stated-conditions'

/** What the programme specifies of a test's conditions, for the form that records the test. */
export interface SpecifiedStart {
  /** What tells it from the others stated for this test; empty when it stands alone. */
  readonly message: string
  /** Whether a test of the lot was recorded under it already. */
  readonly tried: boolean
  /** Values by the name of the test's condition; a condition that nothing is specified for is left out. */
  readonly values: Readonly<Record<string, Cell>>
}

/** Every condition that the programme specifies for a lot's test by a method, those not tried yet first; empty where it specifies none. */
export function conditionsToStartFrom(facts: Facts, lot: Lot, method: TestMethod): SpecifiedStart[] {
  const inputs = inputsOf(countingReads, facts)
  if (method.key === solderFloat.key)
    return inputs ? [floatStart(inputs.floatTemperature.value, inputs.floatTime.value)] : []
  const specified = (facts.values.get(testConditions.key) ?? []) as SpecifiedConditions
  const stated = conditionsFor(specified, method.key, lot)
  const tests = lot.tests.filter((test) => test.method === method.key)
  return stated
    .map((row) => ({
      message: conditionInWords(row, stated),
      tried: inputs !== undefined && tests.some((test) => conditionOf(lot, test, inputs) === row),
      values: valuesFor(method, row),
    }))
    .sort((one, other) => Number(one.tried) - Number(other.tried))
}

/** The least that a float must be to count: its bath is not cooler, nor its time shorter. */
const floatStart = (minC: number, minS: number): SpecifiedStart => ({
  message: '',
  tried: false,
  values: { bathTemperatureC: minC, floatS: minS },
})

const valuesFor = (method: TestMethod, row: SpecifiedConditions[number]): Readonly<Record<string, Cell>> =>
  Object.fromEntries(
    Object.entries(row).flatMap(([name, value]) =>
      value !== undefined && Object.hasOwn(method.conditions, name) ? [[name, value]] : [],
    ),
  )
