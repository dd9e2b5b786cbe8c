import { expect, test } from 'vitest'
import { lotTarget } from '@/lib/readings/import-target'

test('a method is one that is declared, not what every object has', () => {
  expect(lotTarget('L-1', 'rotary-dip')).toMatchObject({ method: { key: 'rotary-dip' } })
  expect(lotTarget('L-1', 'constructor')).toBeUndefined()
  expect(lotTarget('L-1', '__proto__')).toBeUndefined()
})
