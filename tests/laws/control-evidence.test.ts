import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { controlItems } from '@/shared/catalogue/control-items'
import { ALL_PARAMETERS } from '@/shared/catalogue/standard-plan'
import type { Verdict } from '@/shared/rules/finding'
import { readableOf } from '@/shared/rules/rule'
import { findingOf, unchecked, type SetValue } from '../rules/facts-builder'
import { anyValue } from './any-value'

const rules = controlItems.flatMap((item) => item.rules)
const message: readonly Verdict[] = ['meets', 'marginal']

describe('the control rests on evidence', () => {
  test('every rule of the control looks at records', () => {
    const without = rules.filter(
      ({ reads }) => !Object.values(reads).some((read) => readableOf(read).source === 'records'),
    )
    expect(without.map(({ id }) => id)).toEqual([])
  })
  test.each(rules.map((rule) => [rule.id, rule] as const))('%s does not meet on nothing', (_, rule) => {
    expect(message).not.toContain(findingOf(rule).verdict)
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
  test.each(rules.map((rule) => [rule.id, rule] as const))(
    '%s does not meet without a record, whatever is specified',
    (_, rule) => {
      fc.assert(
        fc.property(specification, (values) => {
          expect(message).not.toContain(findingOf(rule, { values }).verdict)
        }),
        { numRuns: 60 },
      )
    },
  )
})
