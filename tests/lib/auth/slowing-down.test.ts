import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  ACCOUNT_FROM_ORIGIN,
  failuresLeft,
  oneMoreFailure,
  ORIGIN,
  secondsBlocked,
  waitAfter,
  type Failures,
  type Slowing,
} from '@/lib/auth/slowing-down'

const DAY_S = 24 * 60 * 60
const NONE: Failures = { count: 0, atMs: 0 }

/** How many tries a machine gets that never makes a right one and tries again as soon as it may. */
function triesOfAMachine(slowing: Slowing, forS: number, fromS = 0): number {
  let failures = NONE
  let tries = 0
  for (let nowMs = 0; nowMs < forS * 1000;) {
    const wait = secondsBlocked(failures, nowMs)
    if (wait > 0) {
      nowMs += wait * 1000
      continue
    }
    failures = oneMoreFailure(failures, nowMs, slowing)
    if (nowMs >= fromS * 1000) tries++
    nowMs += 1
  }
  return tries
}

describe('one account from one origin', () => {
  test('the first four failures cost nothing, then the wait doubles up to half an hour', () => {
    expect([1, 4, 5, 6, 7, 12].map((count) => waitAfter(count, ACCOUNT_FROM_ORIGIN))).toEqual([
      0, 0, 30, 60, 120, 1800,
    ])
  })

  // NIST SP 800-63B, section 5.2.2: no more than 100 failed tries in a row on one account.
  test('a machine that never stops gets fewer than 100 tries a day, on the first and on later ones', () => {
    expect(triesOfAMachine(ACCOUNT_FROM_ORIGIN, DAY_S)).toBeLessThan(100)
    expect(triesOfAMachine(ACCOUNT_FROM_ORIGIN, 8 * DAY_S, 7 * DAY_S)).toBeLessThan(100)
  })

  test('a person who mistyped five times is free again the next morning', () => {
    let failures = NONE
    for (let count = 0; count < 5; count++) failures = oneMoreFailure(failures, 0, ACCOUNT_FROM_ORIGIN)
    expect(secondsBlocked(failures, 0)).toBe(30)
    const morningMs = 14 * 60 * 60 * 1000
    expect(secondsBlocked(failures, morningMs)).toBe(0)
    expect(failuresLeft(failures, morningMs, ACCOUNT_FROM_ORIGIN)).toBeLessThan(0.05)
  })
})

test('an origin that tries one account after the other gets fewer than 1000 tries a day', () => {
  expect(triesOfAMachine(ORIGIN, DAY_S)).toBeLessThan(1000)
})

// The definition of a half-life.
test('failures halve with every half-life, and a clock set back takes none away', () => {
  const failures = { count: 8, atMs: 1_000_000 }
  const { halfLifeS } = ACCOUNT_FROM_ORIGIN
  const left = (lives: number) =>
    failuresLeft(failures, failures.atMs + lives * halfLifeS * 1000, ACCOUNT_FROM_ORIGIN)
  expect([-3, 0, 1, 2, 3].map(left)).toEqual([8, 8, 4, 2, 1])
})

test('waiting longer never makes the next wait longer', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 40, noNaN: true }),
      fc.nat(10 * DAY_S),
      fc.nat(10 * DAY_S),
      (count, oneS, moreS) => {
        const after = (seconds: number) =>
          secondsBlocked(
            oneMoreFailure({ count, atMs: 0 }, seconds * 1000, ACCOUNT_FROM_ORIGIN),
            seconds * 1000,
          )
        expect(after(oneS + moreS)).toBeLessThanOrEqual(after(oneS))
      },
    ),
  )
})
