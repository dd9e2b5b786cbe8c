import { methodName } from '@/shared/methods/test-methods'
import type { Lot } from '@/shared/records/lot'
import { conditionAbout, conditionInWords, conditionsFor, type StatedCondition } from './stated-conditions'
import { sortTests, type TestDemands } from './test-status'

/** One test asked of a lot: its method, under the stated condition that tells it from others by the method. */
export interface TestAsked {
  readonly method: string
  readonly condition: StatedCondition | undefined
  /** All conditions stated for the lot by the method. */
  readonly stated: readonly StatedCondition[]
}

/** A test as it is named in a sentence. */
export const testInWords = ({ method, condition, stated }: TestAsked): string =>
  [methodName(method), conditionInWords(condition, stated)].filter(Boolean).join(' ')

/** A test's name with the condition that tells it from others by the method. */
export const labelOf = (
  label: string,
  condition: StatedCondition | undefined,
  stated: readonly StatedCondition[],
): string => [label, conditionInWords(condition, stated)].filter(Boolean).join(', ')

/** The same as data: its method, and what tells its condition from those stated beside it. */
export const testKey = ({ method, condition, stated }: TestAsked): string =>
  [method, ...Object.values(conditionAbout(condition, stated))].join(' ')

/** Every test that a method stands for on a lot: one for each condition stated for it. */
export function testsAsked(lot: Lot, method: string, { specified }: TestDemands): readonly TestAsked[] {
  const stated = conditionsFor(specified, method, lot)
  return stated.length === 0
    ? [{ method, condition: undefined, stated }]
    : stated.map((condition) => ({ method, condition, stated }))
}

/** Those of which no result counts. */
export const untried = (lot: Lot, methods: readonly string[], demands: TestDemands): readonly TestAsked[] =>
  methods
    .flatMap((method) => testsAsked(lot, method, demands))
    .filter(
      ({ method, condition }) =>
        !sortTests(lot, method, demands, condition).counted.some(({ readings }) => readings.count > 0),
    )
