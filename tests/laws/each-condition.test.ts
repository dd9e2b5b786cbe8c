import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ALL_RULES } from '@/shared/catalogue/standard-plan'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { boardStorageMonths, leadStorageMonths } from '@/shared/plan/parameters/storage'
import type { LotTest } from '@/shared/records/lot'
import { findingOf, set } from '../rules/facts-builder'
import {
  accepted,
  boardConditions,
  boardPlan,
  lastingTimer,
  lot,
  rotaryDip,
  stated,
  times,
} from '../rules/lots-builder'
import { run } from '../rules/record-builder'

const AGEINGS = ['none', 'steam-1h', 'steam-4h', 'steam-8h', 'steam-16h', 'dry-heat-155-4h'] as const
const conditions = fc.uniqueArray(fc.constantFrom(...AGEINGS), { minLength: 2, maxLength: 4 })

const dipAfter = (ageing: (typeof AGEINGS)[number], seconds: number): LotTest =>
  rotaryDip(times(13, seconds), {
    id: `dip after ${ageing}`,
    instrumentId: lastingTimer.id,
    conditions: { ...boardConditions, ageing },
  })

/** Looks at what was used, not at what it showed: an instrument in calibration is so in every test made. */
const OF_INSTRUMENTS = 'instruments-in-calibration'

/** What every rule says of one lot of boards, soldered since, that was tried so. */
const verdicts = (ageings: readonly (typeof AGEINGS)[number][], tests: readonly LotTest[]) =>
  new Map(
    ALL_RULES.map((rule) => [
      rule.id,
      findingOf(rule, {
        values: [
          ...boardPlan,
          set(
            testConditions,
            ageings.map((ageing) => stated('rotary-dip', { ageing })),
          ),
          set(boardStorageMonths, 12),
          set(leadStorageMonths, 12),
        ],
        instruments: [lastingTimer],
        lots: [lot({ tests, disposition: { ...accepted, on: '2026-02-08' } })],
        records: { 'soldering-run': [run(10, { doneOn: '2026-02-20', lots: 'B-01' })] },
        today: '2026-03-01',
      }).verdict,
    ]),
  )

describe('each stated condition is a demand of its own', () => {
  test('no rule that rests on results meets while those under one condition are missing', () => {
    let rested = 0
    fc.assert(
      fc.property(conditions, fc.nat(), (ageings, at) => {
        const tests = ageings.map((ageing) => dipAfter(ageing, 1.2))
        const [whole, none] = [verdicts(ageings, tests), verdicts(ageings, [])]
        const dropped = at % tests.length
        const less = verdicts(
          ageings,
          tests.filter((_, index) => index !== dropped),
        )
        const resting = [...whole].filter(
          ([id, verdict]) => id !== OF_INSTRUMENTS && verdict === 'meets' && none.get(id) !== 'meets',
        )
        rested = Math.max(rested, resting.length)
        for (const [id] of resting) expect([id, less.get(id)]).not.toEqual([id, 'meets'])
      }),
      { numRuns: 25 },
    )
    expect(rested).toBeGreaterThan(5)
  })
})
