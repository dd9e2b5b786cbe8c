import { describe, expect, test } from 'vitest'
import { controlItems } from '@/shared/catalogue/control-items'
import { lawWithoutRecords, restsOnRecords } from './without-records'

const rules = controlItems.flatMap((item) => item.rules)

describe('the control rests on evidence', () => {
  test('every rule of the control looks at records', () => {
    const without = rules.filter((rule) => !restsOnRecords(rule))
    expect(without.map(({ id }) => id)).toEqual([])
  })
  lawWithoutRecords(rules)
})
