import { describe, expect, test } from 'vitest'
import { compoundUm, growthBand, hoursUntilLeft } from '@/shared/physics/intermetallic'
import { allowedFailureRateFit, survivalOf } from '@/shared/physics/joint-budget'
import growth from '@/tests/reference/specification/compound-growth.json'
import rates from '@/tests/reference/specification/joint-rates.json'

/** The table's years are those of the calendar, 365.25 days. */
const HOURS_A_YEAR = 8766
const cells = (rows: Readonly<Record<string, Readonly<Record<string, number>>>>) =>
  Object.entries(rows).flatMap(([row, own]) =>
    Object.entries(own).map(([column, value]) => [Number(row), Number(column), value] as const),
  )

describe('growth of compound, computed from the fit and rounded to a hundredth', () => {
  test.each(cells(growth.compoundUm.rows))('at %s °C over %s years: %s µm', (temperatureC, years, um) => {
    const found = compoundUm(growthBand(temperatureC).fitted, years * HOURS_A_YEAR, 0)
    expect(Math.abs(found - um)).toBeLessThanOrEqual(0.006)
  })
  test.each(cells(growth.yearsToNoTin.rows))(
    '%s µm of tin at %s °C are gone in %s years',
    (coatingUm, at, years) => {
      const found = hoursUntilLeft({ coatingUm, tinShare: 1, firstUm: 0 }, 0, growthBand(at).fitted)
      // Three figures of 0.692 went into the table.
      expect(Math.abs(found / HOURS_A_YEAR - years)).toBeLessThanOrEqual(0.006 + 0.002 * years)
    },
  )
})

describe('the rate a joint may have, computed for boards in series', () => {
  test.each(rates.rows as [number, number, number][])(
    '%s of boards with %s joints: %s FIT',
    (survival, joints, fit) => {
      const { serviceYears } = rates
      expect(allowedFailureRateFit({ joints, serviceYears, survival }) / fit).toBeCloseTo(1, 9)
      expect(survivalOf(joints, serviceYears, fit)).toBeCloseTo(survival, 12)
    },
  )
})
