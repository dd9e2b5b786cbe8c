import { describe, expect, test } from 'vitest'
import { expectedOutsidePerMillion } from '@/shared/statistics/capability/expected-outside'
import { capabilityIndices } from '@/shared/statistics/capability/indices'
import { cpInterval, cpkInterval, cpkLowerBound } from '@/shared/statistics/capability/intervals'
import { capabilityStudy } from '@/shared/statistics/capability/study'
import {
  overallSigma,
  pooledSigma,
  sigmaFromDeviations,
  sigmaFromMovingRange,
  sigmaFromRanges,
} from '@/shared/statistics/capability/within-sigma'
import { chartConstants } from '@/shared/statistics/charts/constants'
import reference from '@/tests/reference/statistics/capability.json'
import charts from '@/tests/reference/statistics/control-charts.json'

const rings = charts.pistonRings.rows
const ringLimits = { lower: 73.95, upper: 74.05, target: 74 }

describe('indices', () => {
  // NIST/SEMATECH e-Handbook 6.1.6: limits 8 and 20, mean 16, standard deviation 2.
  const { inputs, values } = reference.handbook
  const process = { mean: inputs.mean, sigma: inputs.s }

  test('the handbook’s process: Cp 1, Cpk 0.6667, Cpl 1.3333', () => {
    const found = capabilityIndices({ lower: inputs.LSL, upper: inputs.USL, target: 14 }, process)
    expect(found.cp).toBe(values.Cp)
    expect(found.cpk).toBeCloseTo(values.Cpk, 12)
    expect(found.cpl).toBeCloseTo(values.Cpl, 12)
    expect(found.cpu).toBeCloseTo(values.Cpu, 12)
    expect(found.cpm).toBeCloseTo(values.Cpm_target14, 12)
  })

  test('with one limit there is no Cp, and Cpk is that side’s', () => {
    const found = capabilityIndices({ lower: 8 }, process)
    expect(found.cp).toBeUndefined()
    expect(found.cpm).toBeUndefined()
    expect(found.cpk).toBeCloseTo(4 / 3, 12)
  })

  test('a mean outside the limits gives a negative Cpk', () => {
    expect(capabilityIndices({ upper: 20 }, { mean: 21, sigma: 2 }).cpk).toBeLessThan(0)
  })

  test('readings expected outside', () => {
    const found = expectedOutsidePerMillion({ lower: 8, upper: 20 }, process)
    expect(found.below).toBeCloseTo(values.ppm_below, 6)
    expect(found.above).toBeCloseTo(values.ppm_above, 6)
    expect(expectedOutsidePerMillion({ lower: 8 }, process).above).toBe(0)
  })

  test.each([
    [{}, process],
    [{ lower: 20, upper: 8 }, process],
    [{ lower: Number.NaN }, process],
    [{ lower: 8 }, { mean: 16, sigma: 0 }],
    [{ lower: 8 }, { mean: 16, sigma: Number.NaN }],
    [{ lower: 8 }, { mean: Number.NaN, sigma: 1 }],
  ])('%j with %j is refused', (limits, spread) => {
    expect(() => capabilityIndices(limits, spread)).toThrow(RangeError)
  })
})

describe('confidence', () => {
  // Bissell 1990; computed with scipy.
  test.each(reference.intervals.rows)('n = $n, index $Cpk', (row) => {
    const basis = { readings: row.n, degreesOfFreedom: row.n - 1 }
    const ofCpk = cpkInterval(row.Cpk, basis, 0.95)
    expect(ofCpk.lower).toBeCloseTo(row.ci95_Cpk[0]!, 10)
    expect(ofCpk.upper).toBeCloseTo(row.ci95_Cpk[1]!, 10)
    expect(cpkLowerBound(row.Cpk, basis, 0.95)).toBeCloseTo(row.lower95_one_sided, 10)
    const ofCp = cpInterval(row.Cpk, basis, 0.95)
    expect(ofCp.lower).toBeCloseTo(row.ci95_Cp_same_value[0]!, 10)
    expect(ofCp.upper).toBeCloseTo(row.ci95_Cp_same_value[1]!, 10)
  })

  test('a confidence of 1 or NaN is refused', () => {
    const basis = { readings: 20, degreesOfFreedom: 19 }
    expect(() => cpkInterval(1, basis, 1)).toThrow(RangeError)
    expect(() => cpkLowerBound(1, basis, Number.NaN)).toThrow(RangeError)
  })
})

describe('piston rings as a study', () => {
  // Montgomery (1991); computed in R, which takes d2 as 2.326 and 124 degrees of freedom.
  const { values } = reference.pistonRings
  const inR = (sigma: number) => ({
    sigma: (sigma * chartConstants(5).d2) / 2.326,
    degreesOfFreedom: 124,
    method: 'mean-range' as const,
  })
  const study = capabilityStudy({
    values: rings.flat(),
    within: inR(sigmaFromRanges(rings).sigma),
    limits: ringLimits,
    stability: 'stable',
    confidence: 0.95,
  })

  test('indices and intervals agree', () => {
    const { shortTerm } = study
    expect(shortTerm.cp).toBeCloseTo(values.Cp, 9)
    expect(shortTerm.cpk).toBeCloseTo(values.Cpk, 9)
    expect(shortTerm.cpl).toBeCloseTo(values.Cpl, 9)
    expect(shortTerm.cpm).toBeCloseTo(values.Cpm, 9)
    expect(shortTerm.cpInterval!.lower).toBeCloseTo(values.Cp_ci95[0]!, 9)
    expect(shortTerm.cpInterval!.upper).toBeCloseTo(values.Cp_ci95[1]!, 9)
    expect(shortTerm.cpkInterval.lower).toBeCloseTo(values.Cpk_ci95[0]!, 9)
    expect(shortTerm.cpkInterval.upper).toBeCloseTo(values.Cpk_ci95[1]!, 9)
  })

  // R’s package prints [1.480113, 1.901786]: it leaves out the square on 1 + d² in the degrees of
  // freedom n(1 + d²)²/(1 + 2d²). Simulated, its 95 % interval covers 99.3 % at d = 1, n = 20; the one
  // with the square 93.9 %. These values are the squared form, computed with scipy 1.17.1.
  test('the interval of Cpm follows Boyles, not the printed one', () => {
    const { lower, upper } = study.shortTerm.cpmInterval!
    expect(lower).toBeCloseTo(1.4816177439635736, 8)
    expect(upper).toBeCloseTo(1.9002852074047314, 8)
    expect(Math.abs(lower - values.Cpm_ci95[0]!)).toBeLessThan(0.002)
  })

  test('performance by all readings together', () => {
    const overall = reference.pistonRingsOverall.values
    expect(study.longTerm.sigma.sigma).toBeCloseTo(overall.overall_sd, 14)
    expect(study.longTerm.cp).toBeCloseTo(overall.Pp, 10)
    expect(study.longTerm.cpk).toBeCloseTo(overall.Ppk, 10)
  })

  test('ranges are worth fewer degrees of freedom, so the honest interval is wider', () => {
    const honest = capabilityStudy({
      values: rings.flat(),
      within: sigmaFromRanges(rings),
      limits: ringLimits,
      stability: 'stable',
      confidence: 0.95,
    })
    expect(honest.shortTerm.cpkLowerBound).toBeLessThan(study.shortTerm.cpkLowerBound)
  })

  test.each([
    ['stable', true],
    ['unstable', false],
    ['not known', false],
  ] as const)('a process that is %s: speaks for the future %s', (stability, speaks) => {
    const found = capabilityStudy({
      values: [1, 2, 3],
      within: overallSigma([1, 2, 3]),
      limits: { upper: 9 },
      stability,
      confidence: 0.9,
    })
    expect(found.speaksForTheFuture).toBe(speaks)
    expect(found.shortTerm.cpInterval).toBeUndefined()
    expect(found.shortTerm.cpmInterval).toBeUndefined()
  })
})

describe('short-term standard deviation', () => {
  test('pooled over the piston rings, and unequal subgroups', () => {
    // The reference divides by c4 for 101 readings, 0.9975032 (scipy); pooled sigma itself is not divided.
    const { sigma } = pooledSigma(rings)
    expect(sigma / 0.9975031639551356).toBeCloseTo(charts.pistonRings.values.pooled_sd_over_c4, 10)
    // By hand: squares 2 + 0.5 on 2 + 1 degrees of freedom.
    expect(
      pooledSigma([
        [1, 2, 3],
        [1, 2],
      ]),
    ).toEqual({
      sigma: Math.sqrt(2.5 / 3),
      degreesOfFreedom: 3,
      method: 'pooled',
    })
  })

  // Simulated with numpy; ν is defined by the relative variance 1/(2ν).
  test.each(reference.estimatorSpread.rows)('$method is worth its simulated spread', (row) => {
    const subgroups = Array.from({ length: row.subgroups ?? 1 }, () =>
      Array.from({ length: row.size ?? row.readings! }, (_, index) => index),
    )
    const { degreesOfFreedom } =
      row.method === 'moving-range'
        ? sigmaFromMovingRange(subgroups[0]!)
        : row.method === 'mean-range'
          ? sigmaFromRanges(subgroups)
          : sigmaFromDeviations(subgroups)
    expect(1 / (2 * degreesOfFreedom) / row.relativeVariance).toBeCloseTo(1, 1.5)
  })

  test('no spread can be had from single readings in subgroups', () => {
    expect(() => pooledSigma([[1], [2]])).toThrow(RangeError)
    expect(() => sigmaFromMovingRange([1])).toThrow(RangeError)
  })
})
