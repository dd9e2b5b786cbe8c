import { describe, expect, test } from 'vitest'
import { crowAmsaaGrowth, crowAmsaaTimeToReach } from '@/shared/reliability/growth/crow-amsaa'
import { growthFitTest, growthShapeInterval } from '@/shared/reliability/growth/crow-amsaa-fit-test'
import { duaneGrowth, duaneTimeToReach } from '@/shared/reliability/growth/duane'
import reference from '@/tests/reference/statistics/reliability.json'

// A published worked example of 22 failures (read, recomputed to all printed digits).
const { times, value } = reference.growth

describe('Duane', () => {
  test('slope 0.42531, and 46.7 h at the end', () => {
    const fit = duaneGrowth(times)
    expect(fit.growthSlope).toBeCloseTo(value.Duane.alpha, 5)
    expect(fit.scale).toBeCloseTo(value.Duane.A, 5)
    expect(fit.cumulativeMeanTime).toBeCloseTo(value.Duane.DMTBF_C, 4)
    expect(fit.currentMeanTime).toBeCloseTo(value.Duane.DMTBF_I, 4)
    expect(duaneTimeToReach(fit, 35)).toBeCloseTo(value.Duane.t_for_35, 3)
  })

  // NIST/SEMATECH e-Handbook 8.1.9.2.
  test('the handbook’s eight failures: slope 0.493', () => {
    expect(duaneGrowth(reference.duanePlot.times).growthSlope).toBeCloseTo(
      reference.duanePlot.value['slope (ln-ln OLS, computed)'],
      6,
    )
  })

  test('no growth never reaches a target', () => {
    expect(duaneTimeToReach({ growthSlope: 0, scale: 1 }, 10)).toBe(Infinity)
  })
})

describe('power law', () => {
  test('0.61421 and 0.42394, and 45.9 h at the end', () => {
    const fit = crowAmsaaGrowth(times, { estimate: 'maximum likelihood' })
    expect(fit.shape).toBeCloseTo(value.Crow.beta, 5)
    expect(fit.scale).toBeCloseTo(value.Crow.lambda, 5)
    expect(fit.growth).toBeCloseTo(value.Crow.growth, 5)
    expect(fit.cumulativeMeanTime).toBeCloseTo(value.Crow.DMTBF_C, 5)
    expect(fit.currentMeanTime).toBeCloseTo(value.Crow.DMTBF_I, 4)
    expect(crowAmsaaTimeToReach(fit, 35)).toBeCloseTo(value.Crow.t_for_35, 2)
  })

  // NIST/SEMATECH e-Handbook 8.4.5.2: printed 0.5165 and 310.234 (from memory, recomputed).
  test('ended at 1500 h: 310.234 h corrected, 279.211 h not', () => {
    const { times: ten, endedAt, value: expected } = reference.powerLaw
    const corrected = crowAmsaaGrowth(ten, { endedAt, estimate: 'unbiased' })
    expect(corrected.shape).toBeCloseTo(expected.b_hat, 6)
    expect(corrected.growth).toBeCloseTo(expected.beta_hat, 6)
    expect(corrected.scale).toBeCloseTo(expected.a_hat, 6)
    expect(corrected.currentMeanTime).toBeCloseTo(expected.MTBF_end, 3)
    const plain = crowAmsaaGrowth(ten, { endedAt, estimate: 'maximum likelihood' })
    expect(plain.shape).toBeCloseTo(expected['uncorrected b'], 6)
    expect(plain.currentMeanTime).toBeCloseTo(expected['uncorrected MTBF'], 3)
  })

  test('failures that grow more frequent never reach a longer mean time', () => {
    expect(crowAmsaaTimeToReach({ shape: 1.2, scale: 1 }, 10)).toBe(Infinity)
  })
})

describe('failure times', () => {
  test.each([[[]], [[5]], [[5, 3, 8]], [[0, 3, 8]], [[3, Number.NaN, 8]]])(
    '%j are refused',
    (nonconforming) => {
      expect(() => duaneGrowth(nonconforming)).toThrow(RangeError)
      expect(() => crowAmsaaGrowth(nonconforming, { estimate: 'maximum likelihood' })).toThrow(RangeError)
    },
  )

  test('a test cannot end before its last failure, nor be corrected with two', () => {
    expect(() => crowAmsaaGrowth([1, 2], { endedAt: 1, estimate: 'unbiased' })).toThrow(
      'before its last failure',
    )
    expect(() => crowAmsaaGrowth([1, 2], { estimate: 'unbiased' })).toThrow('three failures')
  })
})

describe('how far the power law may be believed', () => {
  const { times: ten, endedAt } = reference.powerLaw
  // Cramér–von Mises as in MIL-HDBK-189 (from memory); statistic and χ² bounds by numpy and scipy 1.17, apart from this code.
  test('the handbook’s ten failures fit, and their shape has bounds', () => {
    expect(growthFitTest(ten, endedAt)).toMatchObject({ critical: 0.167, fits: true })
    expect(growthFitTest(ten, endedAt)?.statistic).toBeCloseTo(0.053768685, 6)
    const { lower, upper } = growthShapeInterval(ten, endedAt, 0.9)
    expect(lower).toBeCloseTo(0.291468455, 6)
    expect(upper).toBeCloseTo(0.843729561, 6)
  })
  test('failures in two crowds do not fit', () => {
    const crowds = [1, 1.1, 1.2, 1.3, 1.4, 96, 97, 98, 98.5, 99]
    expect(growthFitTest(crowds, 100)?.fits).toBe(false)
  })
  test('two failures are not tested', () => expect(growthFitTest([1, 2], 3)).toBeUndefined())
})
