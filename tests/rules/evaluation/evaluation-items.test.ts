import { describe, expect, test } from 'vitest'
import { rowSchema } from '@/shared/columns/column-schema'
import { evaluationItems } from '@/shared/catalogue/evaluation-items'
import type { Limit } from '@/shared/plan/requirement'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { findingOf } from '../facts-builder'
import { readableOf } from '@/shared/rules/rule'

const rules = evaluationItems.flatMap((item) => item.rules)
const limits = evaluationItems.flatMap((item) => item.limits)

describe('the items of the evaluation', () => {
  test('hold every evaluation limit that their rules read', () => {
    const read = rules.flatMap((rule) => Object.values(rule.reads).map(readableOf))
    const limitsRead = read.filter((one): one is Limit => one.source === 'limit')
    for (const { key } of limitsRead) expect(limits.map((limit) => limit.key)).toContain(key)
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
