import { expect, test } from 'vitest'
import { boardFinish, leadFinishes } from '@/shared/plan/parameters/finishes'
import { storeChloride, storeCopperFilm, storeSilverFilm } from '@/shared/plan/parameters/storage'
import { storeAir } from '@/shared/rules/specification/store-air'
import { findingOf, set, type SetValue } from '../facts-builder'
import { leadFinish } from './finish-rows'

const SILVER_BOARD = [set(boardFinish, 'immersion-silver'), set(leadFinishes, [leadFinish()])]
const TIN_BOARD = [set(boardFinish, 'hot-air-tin-lead'), set(leadFinishes, [leadFinish()])]
const verdictWith = (...values: SetValue[]) => findingOf(storeAir, { values }).verdict

// ANSI/ISA-71.04-2013, class G1 (from memory): below 200 Å on silver and 300 Å on copper in 30 days, 20 and 30 nm.
test.each([
  [20, 30, 3, 'meets'],
  [20.1, 30, 3, 'fails'],
  [20, 30.1, 3, 'fails'],
  // ISO 9223, class S0 (from memory): at most 3 mg of chloride a square metre and day.
  [20, 30, 3.1, 'fails'],
])('%s nm on silver, %s nm on copper, %s mg of chloride: %s', (silver, copper, chloride, verdict) => {
  expect(
    verdictWith(
      ...SILVER_BOARD,
      set(storeSilverFilm, silver),
      set(storeCopperFilm, copper),
      set(storeChloride, chloride),
    ),
  ).toBe(verdict)
})

test('a silver board of whose store nothing is stated is undetermined, and says what to state', () => {
  const { verdict, parts } = findingOf(storeAir, { values: SILVER_BOARD })
  expect(verdict).toBe('undetermined')
  expect(parts?.map(({ subject, verdict: one }) => [subject, one])).toEqual([
    [storeSilverFilm.label, 'undetermined'],
    [storeChloride.label, 'undetermined'],
  ])
})

test('tin-lead leaves neither metal open: nothing is asked until something is stated', () => {
  expect(verdictWith(...TIN_BOARD)).toBe('not applicable')
  expect(verdictWith(...TIN_BOARD, set(storeChloride, 5))).toBe('fails')
})
