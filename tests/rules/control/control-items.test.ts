import { describe, expect, test } from 'vitest'
import { mayStayEmpty } from '@/shared/catalogue/standard-plan'
import { controlItems } from '@/shared/catalogue/control-items'

describe('the control stage', () => {
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
