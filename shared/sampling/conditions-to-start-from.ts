import type { Cell } from '@/shared/columns/column'
import { solderFloat } from '@/shared/methods/solder-float'
import type { TestMethod } from '@/shared/methods/test-method'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import type { Lot } from '@/shared/records/lot'
import type { Facts } from '@/shared/rules/facts'
import { inputsOf } from '@/shared/rules/inputs-of'
import { demandsFrom, statusReads } from './sampling-reads'
import { conditionInWords, conditionsFor, type SpecifiedConditions } from './stated-conditions'
import { conditionOf } from './test-status'

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
  const inputs = inputsOf(statusReads, facts)
  const demands = inputs && demandsFrom(inputs)
  if (method.key === solderFloat.key) return demands?.float ? [floatStart(demands.float)] : []
  const specified = (facts.values.get(testConditions.key) ?? []) as SpecifiedConditions
  const stated = conditionsFor(specified, method.key, lot)
  const tests = lot.tests.filter((test) => test.method === method.key)
  return stated
    .map((row) => ({
      message: conditionInWords(row, stated),
      tried: demands !== undefined && tests.some((test) => conditionOf(lot, test, demands) === row),
      values: valuesFor(method, row),
    }))
    .sort((one, other) => Number(one.tried) - Number(other.tried))
}

/** The least that a float must be to count: its bath is not cooler, nor its time shorter. */
const floatStart = ({ minC, minS }: { readonly minC: number; readonly minS: number }): SpecifiedStart => ({
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
