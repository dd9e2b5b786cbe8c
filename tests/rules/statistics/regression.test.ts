import { describe, expect, test } from 'vitest'
import { limitCrossing } from '@/shared/statistics/regression/limit-crossing'
import { predictAt } from '@/shared/statistics/regression/prediction'
import { fitLine } from '@/shared/statistics/regression/straight-line'
import reference from '@/tests/reference/statistics/straight-line.json'

/** Agreement to so many significant digits. */
const digits = (found: number, certified: number): number =>
  found === certified ? 16 : -Math.log10(Math.abs(found - certified) / Math.abs(certified))

describe('a straight line', () => {
  // NIST Statistical Reference Datasets, Norris, certified values.
  const { x, y, certified, prediction } = reference.norris
  const fit = fitLine(x, y)

  test('Norris: the certified values to eleven digits', () => {
    expect(digits(fit.intercept, certified.intercept)).toBeGreaterThan(11)
    expect(digits(fit.slope, certified.slope)).toBeGreaterThan(11)
    expect(digits(fit.interceptError, certified.se_intercept)).toBeGreaterThan(11)
    expect(digits(fit.slopeError, certified.se_slope)).toBeGreaterThan(11)
    expect(digits(fit.residualSigma, certified.residual_sd)).toBeGreaterThan(11)
    expect(digits(fit.rSquared, certified.R2)).toBeGreaterThan(11)
    expect(fit.degreesOfFreedom).toBe(certified.df)
  })

  test.each(prediction)('Norris at $x0, $conf', ({ x0, conf, fit: value, se_mean, ci, pi }) => {
    const found = predictAt(fit, x0, conf)
    expect(digits(found.value, value)).toBeGreaterThan(9)
    expect(digits(found.lineError, se_mean)).toBeGreaterThan(10)
    expect(digits(found.confidenceInterval.lower, ci[0]!)).toBeGreaterThan(9)
    expect(digits(found.confidenceInterval.upper, ci[1]!)).toBeGreaterThan(9)
    expect(digits(found.predictionInterval.lower, pi[0]!)).toBeGreaterThan(9)
    expect(digits(found.predictionInterval.upper, pi[1]!)).toBeGreaterThan(9)
  })

  test('a far offset of y, as of dates in x, costs few digits', () => {
    const shifted = fitLine(
      x.map((value) => value + 1e6),
      y,
    )
    expect(digits(shifted.slope, certified.slope)).toBeGreaterThan(9)
  })

  test('points on a line have no error', () => {
    expect(fitLine([0, 1, 2], [1, 3, 5])).toMatchObject({
      slope: 2,
      intercept: 1,
      residualSigma: 0,
      rSquared: 1,
    })
    expect(fitLine([0, 1, 2], [4, 4, 4])).toMatchObject({ slope: 0, rSquared: 1 })
  })

  test.each([
    [
      [1, 2],
      [1, 2],
    ],
    [
      [1, 1, 1],
      [1, 2, 3],
    ],
    [
      [1, 2, 3],
      [1, 2],
    ],
    [
      [1, 2, 3],
      [1, 2, Number.NaN],
    ],
  ])('%j and %j give no line', (badX, badY) => {
    expect(() => fitLine(badX, badY)).toThrow(RangeError)
  })
})

describe('when a trend reaches a limit', () => {
  // Computed with scipy’s root finder on the prediction bound.
  const weeks = reference.twelveWeeks
  const rising = fitLine(weeks.x, weeks.y)
  const falling = fitLine(
    weeks.x,
    weeks.y.map((value) => 100 - value),
  )

  test('the series is fitted as in the reference', () => {
    expect(rising.intercept).toBeCloseTo(Number(weeks.values.intercept), 10)
    expect(rising.slope).toBeCloseTo(Number(weeks.values.slope), 12)
    const { value, predictionInterval } = predictAt(rising, 16, 0.95)
    expect(value).toBeCloseTo(weeks.prediction[2]!.fit, 10)
    expect(predictionInterval.upper).toBeCloseTo(weeks.prediction[2]!.pi[1]!, 9)
  })

  test.each(weeks.crossings)('upper limit $limit at $confidence', (row) => {
    const found = limitCrossing(rising, { value: row.limit, side: 'upper' }, row.confidence)
    expect(found.byLine).toBeCloseTo(row.byLine, 9)
    expect(found.byPrediction).toBeCloseTo(row.byPrediction, 9)
  })

  test('a lower limit from above', () => {
    const row = reference.falling.crossings[0]!
    const found = limitCrossing(falling, { value: row.limit, side: 'lower' }, row.confidence)
    expect(found.byLine).toBeCloseTo(row.byLine, 9)
    expect(found.byPrediction).toBeCloseTo(row.byPrediction, 9)
  })

  test('even a level series gets there by its prediction, in the end', () => {
    const row = reference.level.crossings[0]!
    const level = fitLine(reference.level.x, reference.level.y)
    const found = limitCrossing(level, { value: row.limit, side: 'upper' }, row.confidence)
    expect(found.byLine).toBeUndefined()
    expect(found.byPrediction).toBeCloseTo(row.byPrediction, 8)
  })

  test('a confidence below one half waits longer than the line, and one half waits as long', () => {
    const at = (confidence: number) => limitCrossing(rising, { value: 99, side: 'upper' }, confidence)
    expect(at(0.3).byPrediction).toBeGreaterThan(at(0.3).byLine!)
    expect(at(0.5).byPrediction).toBeCloseTo(at(0.5).byLine!, 9)
  })

  test('a trend that surely runs away never gets there', () => {
    expect(limitCrossing(rising, { value: 90, side: 'lower' }, 0.95)).toEqual({})
  })

  test('a limit already passed is reached at once', () => {
    expect(limitCrossing(rising, { value: 95, side: 'upper' }, 0.95)).toEqual({
      byLine: 12,
      byPrediction: 12,
    })
    expect(limitCrossing(rising, { value: 95, side: 'upper' }, 0.95, 20)).toEqual({
      byLine: 20,
      byPrediction: 20,
    })
  })

  test('points on a line reach the limit by line and prediction together', () => {
    const exact = fitLine([0, 1, 2], [0, 1, 2])
    expect(limitCrossing(exact, { value: 5, side: 'upper' }, 0.95)).toEqual({ byLine: 5, byPrediction: 5 })
  })

  test('a limit that is no number is refused', () => {
    expect(() => limitCrossing(rising, { value: Number.NaN, side: 'upper' }, 0.95)).toThrow(RangeError)
    expect(() => limitCrossing(rising, { value: 99, side: 'upper' }, 1)).toThrow(RangeError)
  })
})
