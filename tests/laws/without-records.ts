import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ALL_PARAMETERS } from '@/shared/catalogue/standard-plan'
import type { Verdict } from '@/shared/rules/finding'
import { readableOf, type AnyRule } from '@/shared/rules/rule'
import { findingOf, unchecked, type SetValue } from '../rules/facts-builder'
import { anyValue } from './any-value'

/** What is claimed of something seen. */
export const CLAIMS: readonly Verdict[] = ['meets', 'marginal']

export const restsOnRecords = ({ reads }: AnyRule): boolean =>
  Object.values(reads).some((read) => readableOf(read).source === 'records')

/** The law of a stage whose rules look at records: without any, none of them claims anything, whatever is specified. */
export function lawWithoutRecords(rules: readonly AnyRule[]): void {
  const named = rules.map((rule) => [rule.id, rule] as const)
  test.each(named)('%s does not meet on nothing', (_, rule) => {
    expect(CLAIMS).not.toContain(findingOf(rule).verdict)
  })
  const read = new Set(rules.flatMap((rule) => Object.values(rule.reads).map((one) => readableOf(one).key)))
  const parameters = ALL_PARAMETERS.filter(({ key }) => read.has(key))
  const specification = fc
    .tuple(...parameters.map((parameter) => fc.option(anyValue(parameter), { nil: undefined })))
    .map((values) =>
      values.flatMap((value, index): SetValue[] =>
        value === undefined ? [] : [unchecked(parameters[index]!, value)],
      ),
    )
  test.each(named)('%s does not meet without a record, whatever is specified', (_, rule) => {
    fc.assert(
      fc.property(specification, (values) => {
        expect(CLAIMS).not.toContain(findingOf(rule, { values }).verdict)
      }),
      { numRuns: 60 },
    )
  })
}
