import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { allowedDefectsPerMillion, allowedFailureRateFit, survivalOf } from '@/shared/physics/joint-budget'

describe('the failure rate a survival target leaves to each joint', () => {
  // Series model at a constant rate over 20 years of 8760 h; computed with an independent program.
  test.each([
    [0.9, 100, 6.013728062661317],
    [0.95, 500, 0.5855398902688422],
    [0.99, 500, 0.11472986134134076],
    [0.99, 10_000, 0.005736493067067038],
    [0.9999, 10_000, 5.708047964232153e-5],
  ])('survival %s with %i joints asks %s FIT', (survival, joints, fit) => {
    expect(allowedFailureRateFit({ joints, serviceYears: 20, survival })).toBeCloseTo(fit, 12)
  })

  // The same model forwards, 20 years.
  test.each([
    [500, 0.01, 0.999124],
    [10_000, 0.07, 0.884582],
    [500, 1.3, 0.892365],
    [10_000, 1, 0.173427],
  ])('%i joints at %s FIT survive with %s', (joints, fit, survival) => {
    expect(survivalOf(joints, 20, fit)).toBeCloseTo(survival, 6)
  })

  test('the two directions undo each other', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 50_000 }),
        fc.double({ min: 0.5, max: 60, noNaN: true }),
        fc.double({ min: 0.5, max: 0.999999, noNaN: true }),
        (joints, serviceYears, survival) => {
          const fit = allowedFailureRateFit({ joints, serviceYears, survival })
          expect(survivalOf(joints, serviceYears, fit)).toBeCloseTo(survival, 10)
        },
      ),
    )
  })

  test.each([0, 1, -1, Number.NaN])('a survival target of %s is refused', (survival) => {
    expect(() => allowedFailureRateFit({ joints: 1, serviceYears: 1, survival })).toThrow(RangeError)
  })
})

describe('the defect level a board yield leaves to each joint', () => {
  // Exact binomial model; computed with an independent program.
  test.each([
    [0.99, 500, 20.10046968980994],
    [0.95, 500, 102.5813269509568],
    [0.9, 500, 210.69883119850806],
    [0.99, 2000, 5.025155300653061],
  ])('a yield of %s over %i joints allows %s per million', (share, joints, perMillion) => {
    expect(allowedDefectsPerMillion({ joints, defectFreeBoards: share })).toBeCloseTo(perMillion, 8)
  })

  test.each([0, -3, Number.NaN])('a board of %s joints is refused', (joints) => {
    expect(() => allowedDefectsPerMillion({ joints, defectFreeBoards: 0.9 })).toThrow(RangeError)
  })
})
