import { describe, expect, test } from 'vitest'
import { ALL_LIMITS, ALL_PARAMETERS, mayStayEmpty } from '@/shared/catalogue/standard-plan'
import { controlItems } from '@/shared/catalogue/control-items'
import { readableOf } from '@/shared/rules/rule'

const held = new Set([...ALL_PARAMETERS, ...ALL_LIMITS].map(({ key }) => key))
const rules = controlItems.flatMap((item) => item.rules)
const read = rules.flatMap((rule) => Object.values(rule.reads).map(readableOf))

describe('the control stage', () => {
  test('every rule, parameter and limit belongs to exactly one item', () => {
    const keys = controlItems.flatMap((item) => [
      ...item.rules.map(({ id }) => `rule ${id}`),
      ...item.parameters.map(({ key }) => key),
      ...item.limits.map(({ key }) => key),
    ])
    expect(new Set(keys).size).toBe(keys.length)
  })
  test('what its rules read is held by the plan, and what it holds is read', () => {
    const declared = read.filter(({ source }) => source === 'parameter' || source === 'limit')
    expect(declared.map(({ key }) => key).filter((key) => !held.has(key))).toEqual([])
    const keys = new Set(read.map(({ key }) => key))
    const own = controlItems.flatMap((item) => [...item.parameters, ...item.limits])
    expect(own.map(({ key }) => key).filter((key) => !keys.has(key))).toEqual([])
  })
  test('few values must be filled in before the gate', () => {
    const must = controlItems.flatMap((item) => item.parameters).filter((one) => !mayStayEmpty(one))
    expect(must.length).toBeLessThanOrEqual(8)
  })
  test('production and quality approve every item', () => {
    for (const { key, approvers } of controlItems) {
      expect(approvers, key).toEqual(expect.arrayContaining(['production', 'quality']))
    }
  })
})
