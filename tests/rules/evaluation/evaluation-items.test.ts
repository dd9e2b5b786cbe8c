import { describe, expect, test } from 'vitest'
import { rowSchema } from '@/shared/columns/column-schema'
import { evaluationItems } from '@/shared/catalogue/evaluation-items'
import type { Limit } from '@/shared/plan/requirement'
import type { Parameter } from '@/shared/plan/parameter'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { findingOf } from '../facts-builder'
import { readableOf } from '@/shared/rules/rule'

const rules = evaluationItems.flatMap((item) => item.rules)
const parameters = evaluationItems.flatMap((item) => item.parameters)
const limits = evaluationItems.flatMap((item) => item.limits)

describe('the items of the evaluation', () => {
  test('hold every rule, parameter and limit once', () => {
    for (const keys of [
      rules.map(({ id }) => id),
      parameters.map(({ key }) => key),
      limits.map(({ key }) => key),
    ]) {
      expect(new Set(keys).size).toBe(keys.length)
    }
  })
  test('hold every evaluation limit that their rules read', () => {
    const read = rules.flatMap((rule) => Object.values(rule.reads).map(readableOf))
    const limitsRead = read.filter((one): one is Limit => one.source === 'limit')
    for (const { key } of limitsRead) expect(limits.map((limit) => limit.key)).toContain(key)
  })
  test('have no parameter or limit that no rule reads', () => {
    const keys = new Set(
      rules.flatMap((rule) => Object.values(rule.reads).map((read) => readableOf(read).key)),
    )
    for (const { key } of [...parameters, ...limits] as (Parameter | Limit)[])
      expect([key, keys.has(key)]).toEqual([key, true])
  })
  test('are agreed by quality and at least one more department', () => {
    for (const { approvers } of evaluationItems) {
      expect(approvers).toContain('quality')
      expect(approvers.length).toBeGreaterThan(1)
    }
  })
})

test.each(rules.map((rule) => [rule.id, rule] as const))(
  '%s passes nothing by absence of a specification',
  (_, rule) => {
    const finding = findingOf(rule)
    expect(finding.found.length).toBeGreaterThan(0)
    // With nothing specified and nothing recorded, only what nobody asked for may be settled.
    if (finding.verdict === 'not applicable') expect(finding.found).toMatch(/^(No|Nothing)/)
    else expect(finding.verdict).toBe('undetermined')
  },
)

describe.each(Object.entries(TEST_METHODS))('%s', (key, method) => {
  test('bears its key and charts a column it has', () => {
    expect(method.key).toBe(key)
    expect(Object.keys(method.columns)).toContain(method.charted)
    expect(method.lotKinds.length).toBeGreaterThan(0)
  })
  test('names its specimens, since samples are counted in them', () => {
    expect(Object.keys(method.columns)).toContain('specimen')
  })
  test('refuses a row without any field', () => {
    expect(rowSchema(method.columns).safeParse({}).success).toBe(false)
  })
})
