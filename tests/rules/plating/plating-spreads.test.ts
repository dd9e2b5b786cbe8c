import { describe, expect, test } from 'vitest'
import { boardFinish, boardFinishMin, boardFinishMax } from '@/shared/plan/parameters/finishes'
import type { LotTest } from '@/shared/records/lot'
import { platingSpreads } from '@/shared/plating/plating-spreads'
import reference from '@/tests/reference/statistics/tolerance.json'
import { factsWith, set } from '../facts-builder'
import { boardPlan, lot, rejected, testOf, timer } from '../lots-builder'

/** Ten readings of mean 8 and standard deviation 0.5. */
const readings = (deposit: string, count = 10): LotTest => {
  const step = 0.5 * Math.sqrt((count - 1) / count)
  const rows = Array.from({ length: count }, (_, at) => ({
    specimen: `s${at}`,
    place: 'track',
    thicknessUm: 8 + (at % 2 === 0 ? -step : step),
  }))
  return testOf('plating-thickness', rows, { conditions: { deposit, technique: 'x-ray' } })
}
const values = [
  ...boardPlan,
  set(boardFinish, 'tin-lead-plated'),
  set(boardFinishMin, 5),
  set(boardFinishMax, 10),
]
const content = { coverage: 0.95, confidence: 0.95 }
const spreads = (...tests: LotTest[]) =>
  platingSpreads(factsWith({ values, instruments: [timer], lots: [lot({ tests })] }), content)

const TWO_SIDED = reference.factors.rows.find(
  ({ readings: count, coverage, confidence }) => count === 10 && coverage === 0.95 && confidence === 0.95,
)!.twoSided

describe('spread of a lot’s thickness', () => {
  // Two-sided k for ten readings, 95 % covered with 95 % confidence (tests/reference/statistics/tolerance.json, computed in R).
  test('bounds at mean ∓ k·s, beside the order’s window', () => {
    const [one] = spreads(readings('tin-lead'))
    expect(one?.mean).toBeCloseTo(8, 9)
    expect(one?.bounds.lower).toBeCloseTo(8 - TWO_SIDED * 0.5, 6)
    expect(one?.bounds.upper).toBeCloseTo(8 + TWO_SIDED * 0.5, 6)
    expect(one?.window).toMatchObject({ minUm: 5, maxUm: 10 })
  })

  test('none for another deposit than the finish, one reading, or a rejected lot', () => {
    expect(spreads(readings('gold'))).toEqual([])
    expect(spreads(readings('tin-lead', 1))).toEqual([])
    const out = lot({ tests: [readings('tin-lead')], disposition: rejected })
    expect(platingSpreads(factsWith({ values, instruments: [timer], lots: [out] }), content)).toEqual([])
  })
})
