import { describe, expect, test } from 'vitest'
import { medianRanks } from '@/shared/reliability/weibull/median-ranks'
import { weibayesScale, weibayesScaleBound } from '@/shared/reliability/weibull/weibayes'
import { weibullBounds } from '@/shared/reliability/weibull/weibull-bounds'
import { weibullFitTest } from '@/shared/reliability/weibull/weibull-fit-test'
import { weibullByLikelihood } from '@/shared/reliability/weibull/weibull-likelihood'
import { weibullMean, weibullStandardDeviation } from '@/shared/reliability/weibull/weibull-moments'
import { weibullByRanks } from '@/shared/reliability/weibull/weibull-rank-fit'
import reference from '@/tests/reference/statistics/reliability.json'

const { failures, printed, refitted, benard } = reference.weibullCensored
const censored = { failures, suspensions: new Array<number>(10).fill(500) }

describe('by likelihood', () => {
  // NIST/SEMATECH e-Handbook 8.4.1.3: ten failures, ten units taken out at 500 h.
  test('the handbook’s fit: 606.5280 h and 1.7208', () => {
    const fit = weibullByLikelihood(censored)
    expect(Math.abs(fit.scale - printed.eta)).toBeLessThan(0.001)
    expect(fit.shape).toBeCloseTo(printed.beta, 4)
    expect(fit.scale).toBeCloseTo(refitted.eta, 3)
    expect(fit.shape).toBeCloseTo(refitted.beta, 6)
    expect(fit.logLikelihood).toBeCloseTo(refitted.loglik, 6)
    expect(fit.akaike).toBeCloseTo(refitted.AIC, 5)
    expect(weibullMean(fit)).toBeCloseTo(printed.mean, 3)
    expect(weibullStandardDeviation(fit)).toBeCloseTo(refitted.sd, 3)
    expect(fit).toMatchObject({ failures: 10, suspensions: 10 })
  })

  test('complete data', () => {
    const fit = weibullByLikelihood({ failures: reference.weibullRanks.lives })
    expect(fit.shape).toBeCloseTo(reference.weibullRanks.likelihood.beta, 5)
    expect(fit.scale).toBeCloseTo(reference.weibullRanks.likelihood.eta, 5)
    expect(fit.logLikelihood).toBeCloseTo(reference.weibullRanks.likelihood.loglik, 5)
  })

  test('lives in the millions do not overflow', () => {
    const fit = weibullByLikelihood({ failures: failures.map((life) => life * 1e6), suspensions: [5e8, 5e8] })
    expect(fit.scale).toBeGreaterThan(1e8)
    expect(fit.shape).toBeGreaterThan(1)
  })

  test.each([
    [{ failures: [] }],
    [{ failures: [], suspensions: [100] }],
    [{ failures: [100, 100] }],
    [{ failures: [100], suspensions: [50] }],
    [{ failures: [0, 100] }],
    [{ failures: [Number.NaN, 100] }],
  ])('%j gives no fit', (data) => {
    expect(() => weibullByLikelihood(data)).toThrow(RangeError)
  })

  test('a life of shape 1 has mean and deviation equal to its scale', () => {
    expect(weibullMean({ shape: 1, scale: 7 })).toBeCloseTo(7, 12)
    expect(weibullStandardDeviation({ shape: 1, scale: 7 })).toBeCloseTo(7, 10)
  })
})

describe('by ranks', () => {
  // A published worked example (read, recomputed).
  const data = { failures: reference.weibullRanks.lives }

  test('median ranks and the line through them', () => {
    medianRanks(data).forEach(({ shareFailed }, index) =>
      expect(shareFailed).toBeCloseTo(reference.weibullRanks.value.F[index]!, 8),
    )
    const fit = weibullByRanks(data, 'rank on life')
    expect(fit.shape).toBeCloseTo(reference.weibullRanks.value.beta, 10)
    expect(fit.scale).toBeCloseTo(reference.weibullRanks.value.eta, 9)
    const other = weibullByRanks(data, 'life on rank')
    expect(other.shape).toBeCloseTo(reference.weibullRanks.lifeOnRank.beta, 6)
    expect(other.scale).toBeCloseTo(reference.weibullRanks.lifeOnRank.eta, 5)
  })

  test('units taken out push later ranks up', () => {
    const { failures: failed, suspensions, value } = reference.censoredRanks
    medianRanks({ failures: failed, suspensions }).forEach(({ life, shareFailed }, index) => {
      expect(life).toBe(failed[index])
      expect(shareFailed).toBeCloseTo(value[index]!, 8)
    })
  })

  test('the handbook’s censored data, both regressions', () => {
    const rankOnLife = weibullByRanks(censored, 'rank on life')
    expect(rankOnLife.shape).toBeCloseTo(benard.rankOnLife.beta, 5)
    expect(rankOnLife.scale).toBeCloseTo(benard.rankOnLife.eta, 3)
    const lifeOnRank = weibullByRanks(censored, 'life on rank')
    expect(lifeOnRank.shape).toBeCloseTo(benard.lifeOnRank.beta, 5)
    expect(lifeOnRank.scale).toBeCloseTo(benard.lifeOnRank.eta, 3)
  })

  test('a unit taken out at the moment of a failure outlived it', () => {
    expect(medianRanks({ failures: [100], suspensions: [100] })[0]!.shareFailed).toBeCloseTo(0.7 / 2.4, 12)
  })

  test('two failures make no line', () => {
    expect(() => weibullByRanks({ failures: [1, 2] }, 'rank on life')).toThrow(RangeError)
  })
})

describe('with a known shape', () => {
  // Formula from memory; values computed.
  test.each(reference.weibayes.rows)('$n units for $hours h, shape $beta, $CL', (row) => {
    const data = { failures: [], suspensions: new Array<number>(row.n).fill(row.hours) }
    expect(weibayesScaleBound(data, row.beta, row.CL) / row.eta).toBeCloseTo(1, 10)
  })

  test('at the likelihood’s own shape it returns the likelihood’s scale', () => {
    const fit = weibullByLikelihood(censored)
    expect(weibayesScale(censored, fit.shape)).toBeCloseTo(fit.scale, 8)
    expect(weibayesScaleBound(censored, fit.shape, 0.9)).toBeLessThan(fit.scale)
  })

  test('no failure gives no likeliest value, no unit gives nothing', () => {
    expect(() => weibayesScale({ failures: [], suspensions: [100] }, 2)).toThrow('no likeliest value')
    expect(() => weibayesScaleBound({ failures: [] }, 2, 0.9)).toThrow('No unit')
    expect(() => weibayesScaleBound({ failures: [1] }, 0, 0.9)).toThrow(RangeError)
  })
})

describe('bounds of the fit', () => {
  // The same ten failures of 20: information by finite differences of the likelihood, normal quantiles of scipy 1.17, apart from this code.
  test('the handbook’s data: shape 1.065 to 2.781, 1 % failed by 13.0 to 134.9 h, with 90 %', () => {
    const bounds = weibullBounds(censored, weibullByLikelihood(censored), 0.9)
    expect(bounds.shape.lower).toBeCloseTo(1.064812, 3)
    expect(bounds.shape.upper).toBeCloseTo(2.780906, 3)
    expect(bounds.lifeAt(0.01).lower).toBeCloseTo(12.9946, 2)
    expect(bounds.lifeAt(0.01).upper).toBeCloseTo(134.8866, 1)
  })
})

describe('test of fit', () => {
  // Statistic and tail by numpy and scipy 1.17, apart from this code; of 20 000 Weibull samples 5.0 % fall below 0.05.
  test('the handbook’s data are of one Weibull', () => {
    const found = weibullFitTest(censored)
    expect(found?.statistic).toBeCloseTo(0.31620446, 7)
    expect(found?.chance).toBeCloseTo(0.94196586, 7)
  })
  test('lives of two causes are not', () => {
    const two = { failures: [100, 101, 102, 103, 104, 900, 2000, 5000, 9000] }
    expect(weibullFitTest(two)?.chance).toBeLessThan(0.01)
  })
  test('three failures, or units taken out before the last, are not tested', () => {
    expect(weibullFitTest({ failures: [1, 2, 3] })).toBeUndefined()
    expect(weibullFitTest({ failures: [1, 2, 3, 4], suspensions: [2] })).toBeUndefined()
  })
  test('failures all at one time, after others were taken out, get a message that is true of them', () =>
    expect(() => weibullByLikelihood({ failures: [9, 9], suspensions: [3] })).toThrow('no unit ran longer'))
})
