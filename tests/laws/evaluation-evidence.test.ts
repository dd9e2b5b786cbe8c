import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluationItems } from '@/shared/catalogue/evaluation-items'
import { ALL_PARAMETERS } from '@/shared/catalogue/standard-plan'
import type { Verdict } from '@/shared/rules/finding'
import { readableOf, type AnyRule } from '@/shared/rules/rule'
import { findingOf, unchecked, type SetValue } from '../rules/facts-builder'
import { anyValue } from './any-value'

const evaluationRules = evaluationItems.flatMap((item) => item.rules)
const restsOnRecords = ({ reads }: AnyRule): boolean =>
  Object.values(reads).some((read) => readableOf(read).source === 'records')
const rules = evaluationRules.filter(restsOnRecords)
const says: readonly Verdict[] = ['meets', 'marginal']

describe('the evaluation rests on evidence', () => {
  test('every rule but the one on what an ageing stands for looks at records', () => {
    const without = evaluationRules.filter((rule) => !restsOnRecords(rule))
    expect(without.map(({ id }) => id)).toEqual(['ageing-stands-for'])
  })
  test.each(rules.map((rule) => [rule.id, rule] as const))('%s does not meet on nothing', (_, rule) => {
    expect(says).not.toContain(findingOf(rule).verdict)
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
          expect(says).not.toContain(findingOf(rule, { values }).verdict)
        }),
        { numRuns: 60 },
      )
    },
  )
})
