import { methodName } from '@/shared/methods/test-methods'
import type { Lot } from '@/shared/records/lot'
import { kindAndPart } from '@/shared/records/lot-identity'
import { conditionAbout, conditionInWords, conditionsFor, type StatedCondition } from './stated-conditions'
import type { ConditionInputs } from './condition-differences'
import { sortTests, type CountingInputs } from './counted-tests'

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

/** A test as a table names it, by its method's label. */
export const testLabel = (label: string, { condition, stated }: TestAsked): string =>
  [label, conditionInWords(condition, stated)].filter(Boolean).join(', ')

/** The same as data: its method, and what tells its condition from those stated beside it. */
export const testKey = ({ method, condition, stated }: TestAsked): string =>
  [method, ...Object.values(conditionAbout(condition, stated))].join(' ')

/** Every test that a method stands for on a lot: one for each condition stated for it. */
export function testsAsked(
  lot: Pick<Lot, 'kind' | 'part'>,
  method: string,
  { conditions = [] }: Pick<ConditionInputs, 'conditions'>,
): readonly TestAsked[] {
  const stated = conditionsFor(conditions, method, lot)
  return stated.length === 0
    ? [{ method, condition: undefined, stated }]
    : stated.map((condition) => ({ method, condition, stated }))
}

/** Those of which no result counts. */
export const untried = (lot: Lot, methods: readonly string[], inputs: CountingInputs): readonly TestAsked[] =>
  methods
    .flatMap((method) => testsAsked(lot, method, inputs))
    .filter(
      ({ method, condition }) =>
        !sortTests(lot, method, inputs, condition).counted.some(({ readings }) => readings.count > 0),
    )

/** Whether the plan asks a method of a lot's part. */
export function askedOf(
  needed: readonly { readonly kind: string; readonly part: string; readonly method: string }[],
): (lot: { readonly kind: string; readonly part: string }, method: string) => boolean {
  const asked = new Set(needed.map((row) => `${kindAndPart(row)}\n${row.method}`))
  return (lot, method) => asked.has(`${kindAndPart(lot)}\n${method}`)
}
