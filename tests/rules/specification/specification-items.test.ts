import { describe, expect, test } from 'vitest'
import { STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import { frameItems } from '@/shared/catalogue/frame-items'
import { specificationItems } from '@/shared/catalogue/specification-items'
import { readableOf } from '@/shared/rules/rule'

const items = [...frameItems, ...specificationItems]
const countOf = (keys: readonly string[]): Map<string, number> =>
  keys.reduce((counts, key) => counts.set(key, (counts.get(key) ?? 0) + 1), new Map<string, number>())

describe('the specification stage', () => {
  test('every parameter, limit and rule belongs to exactly one item', () => {
    for (const counts of [
      countOf(items.flatMap((item) => item.parameters.map(({ key }) => key))),
      countOf(items.flatMap((item) => item.limits.map(({ key }) => key))),
      countOf(items.flatMap((item) => item.rules.map(({ id }) => id))),
    ]) {
      expect([...counts].filter(([, count]) => count !== 1)).toEqual([])
    }
  })

  test('every parameter and limit that a rule reads belongs to an item of the plan', () => {
    const held = new Set(
      STANDARD_PLAN.flatMap((item) => [...item.parameters, ...item.limits].map(({ key }) => key)),
    )
    const read = items
      .flatMap((item) => item.rules)
      .flatMap((rule) => Object.values(rule.reads).map(readableOf))
      .filter(({ source }) => source === 'parameter' || source === 'limit')
    expect(read.filter(({ key }) => !held.has(key)).map(({ key }) => key)).toEqual([])
  })

  test('every parameter and limit of the stage is read by a rule of the stage', () => {
    const read = new Set(
      items
        .flatMap((item) => item.rules)
        .flatMap((rule) => Object.values(rule.reads).map((each) => readableOf(each).key)),
    )
    const own = specificationItems.flatMap((item) => [...item.parameters, ...item.limits])
    expect(own.filter(({ key }) => !read.has(key)).map(({ key }) => key)).toEqual([])
  })

  test('quality and at least one other department approve every item', () => {
    for (const item of items) {
      expect(item.approvers, item.key).toContain('quality')
      expect(item.approvers.length, item.key).toBeGreaterThan(1)
    }
  })

  test('keys are kebab-case, and rules say what they protect', () => {
    const keys = items.flatMap((item) => [
      item.key,
      ...item.parameters.map(({ key }) => key),
      ...item.limits.map(({ key }) => key),
      ...item.rules.map(({ id }) => id),
    ])
    for (const key of keys) expect(key).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/)
    for (const rule of items.flatMap((item) => item.rules)) {
      expect(rule.stage).toBe('specification')
      expect(rule.why.length, rule.id).toBeGreaterThan(40)
    }
  })
})
