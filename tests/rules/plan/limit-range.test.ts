import { describe, expect, test } from 'vitest'
import { ALL_LIMITS, findLimit } from '@/shared/catalogue/standard-plan'
import { changeRefused } from '@/shared/lessons/lesson-change'
import { impossibleLimit } from '@/shared/plan/limit-range'

const refused = (key: string, value: number) => impossibleLimit(findLimit(key)!, value)

describe('the values that a limit can have', () => {
  test.each(ALL_LIMITS.map((limit) => [limit.key, limit] as const))(
    'hold the default of %s',
    (_key, limit) => {
      expect(impossibleLimit(limit, limit.byDefault.value)).toBeUndefined()
    },
  )

  test.each([
    ['radial-clearance-least', -0.1, 'a size is never negative'],
    ['hole-copper-least', -25, 'a size is never negative'],
    ['radial-clearance-most', 0, 'no hole is as narrow as its lead'],
    ['demonstration-confidence-least', 140, 'a confidence is no more than 100 %'],
    // An exact bound at a confidence of 1 is infinite: Clopper and Pearson, Biometrika 26 (1934).
    ['demonstration-confidence-least', 100, 'nothing is shown for certain'],
    ['fatigue-share-failed-most', 0, 'no population is without any failure'],
    ['section-void-most', 101, 'a share is no more than the whole'],
    ['clearance-outside-most', 1_000_001, 'a million of a million are all'],
    ['bath-temperature-tin-lead-least', -300, 'nothing is colder than absolute zero'],
    ['ionic-residue-most', Number.MIN_VALUE, 'it cannot be told from zero'],
    ['ionic-residue-most', Number.POSITIVE_INFINITY, 'it is no number'],
    ['ionic-residue-most', Number.NaN, 'it is no number'],
  ])('of %s are not %d: %s', (key, value) => {
    expect(refused(key, value)).toMatch(/^This limit lies between /)
  })

  test('of a count or a share may be none at all', () => {
    expect(refused('rework-heats-most', 0)).toBeUndefined()
    expect(refused('section-void-most', 0)).toBeUndefined()
  })

  test('are asked of a lesson that proposes a limit, too', () => {
    const change = { kind: 'limit', limit: 'demonstration-confidence-least', value: 140 } as const
    expect(changeRefused(change)).toBe('This limit lies between 50 % and 99.99 %.')
  })
})
