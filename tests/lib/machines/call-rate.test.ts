import { describe, expect, test } from 'vitest'
import { CALLS_AT_ONCE, CALLS_PER_SECOND, callRate } from '@/lib/machines/call-rate'

describe('how often a machine may call', () => {
  test('a burst, then as fast as calls are earned', () => {
    let now = 0
    const waitOf = callRate(() => now)
    const burst = Array.from({ length: CALLS_AT_ONCE }, () => waitOf('a'))
    expect(burst.every((wait) => wait === 0)).toBe(true)
    expect(waitOf('a')).toBeGreaterThan(0)
    now += 1000 / CALLS_PER_SECOND
    expect(waitOf('a')).toBe(0)
    expect(waitOf('a')).toBeGreaterThan(0)
  })

  test('one machine’s calls are not another’s', () => {
    const waitOf = callRate(() => 0)
    for (let call = 0; call <= CALLS_AT_ONCE; call++) waitOf('a')
    expect(waitOf('a')).toBeGreaterThan(0)
    expect(waitOf('b')).toBe(0)
  })

  test('a clock that goes back takes nothing away', () => {
    let now = 10_000
    const waitOf = callRate(() => now)
    waitOf('a')
    now = 0
    expect(waitOf('a')).toBe(0)
  })
})
