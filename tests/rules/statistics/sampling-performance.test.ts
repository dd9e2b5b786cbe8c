import { describe, expect, test } from 'vitest'
import { ACCEPTANCE_QUALITY_LIMITS } from '@/shared/statistics/sampling/acceptance-quality-limit'
import {
  acceptanceAtDefectsPerUnit,
  acceptanceOfLot,
} from '@/shared/statistics/sampling/attribute-operating-curve'
import { acceptanceOfProcess, consumersRisk } from '@/shared/statistics/sampling/attribute-operating-curve'
import { fractionAtAcceptance, producersRisk } from '@/shared/statistics/sampling/attribute-operating-curve'
import { doublePlanPerformance } from '@/shared/statistics/sampling/double-operating-curve'
import { doublePlan } from '@/shared/statistics/sampling/double-plan'
import {
  doubleOutgoingFraction,
  outgoingQuality,
  outgoingQualityLimit,
  variablesOutgoingFraction,
} from '@/shared/statistics/sampling/outgoing-quality'
import { singlePlan } from '@/shared/statistics/sampling/single-plan'
import {
  acceptanceByVariables,
  judgeVariables,
  variablesPlan,
} from '@/shared/statistics/sampling/variables-plan'
import { VARIABLES_LETTERS, VARIABLES_LIMITS } from '@/shared/statistics/sampling/variables-plan'
import { whatTheSampleProves } from '@/shared/statistics/sampling/what-the-sample-proves'
import {
  zeroAcceptanceSample,
  zeroAcceptanceSampleFromLot,
} from '@/shared/statistics/sampling/zero-acceptance'
import reference from '@/tests/reference/statistics/sampling-performance.json'
import { relativeError } from './relative-error'

const expectClose = (actual: number, expected: number, within = 1e-9) =>
  expect(relativeError(actual, expected), `${actual} against ${expected}`).toBeLessThan(within)

describe('operating curve of single plans', () => {
  // Computed with scipy.
  test.each(reference.points.rows)('$sampleSize, accept $accept: the curve both ways', (row) => {
    for (const [acceptance, fraction] of Object.entries(row.binomial)) {
      expectClose(fractionAtAcceptance(row, Number(acceptance)), fraction)
      expectClose(acceptanceOfProcess(row, fraction), Number(acceptance))
    }
    for (const [acceptance, defectsPerUnit] of Object.entries(row.poisson)) {
      expectClose(acceptanceAtDefectsPerUnit(row, defectsPerUnit), Number(acceptance))
    }
  })

  // MIL-STD-105E table X-J, published three figures from memory: 1.03, 3.33, 6.52 %.
  test('letter J at 1.0', () => {
    const plan = singlePlan('J', '1.0', 'normal')
    expect(plan).toMatchObject({ sampleSize: reference.letterJ.sampleSize, accept: reference.letterJ.accept })
    const percents = [0.95, 0.5, 0.1].map((acceptance) => 100 * fractionAtAcceptance(plan, acceptance))
    expect(percents.map((percent) => percent.toFixed(2))).toEqual(['1.03', '3.33', '6.52'])
  })

  // NIST/SEMATECH e-Handbook 6.2.3.2: 52, accept 3. Printed from memory to 3 figures; at 4 and 5 % the
  // printed .845 and .739 differ by .001 from what both scipy and this give.
  test('the handbook’s 52 with 3', () => {
    Object.entries(reference.nist.values).forEach(([fraction, acceptance], index) => {
      const found = acceptanceOfProcess(reference.nist, Number(fraction))
      expectClose(found, acceptance)
      expect(Math.abs(found - reference.nist.published[index]!)).toBeLessThan(0.0015)
    })
  })

  test.each(reference.lots.rows)('lot $N with $D, sample $n, accept $Ac', (row) => {
    const plan = { sampleSize: row.n, accept: row.Ac }
    expectClose(acceptanceOfLot(plan, row.N, row.D), row.Pa_hypergeom)
    expectClose(acceptanceOfProcess(plan, row.D / row.N), row.Pa_binomial)
    expectClose(acceptanceAtDefectsPerUnit(plan, row.D / row.N), row.Pa_poisson)
  })

  test('the two risks are the curve at the two agreed qualities', () => {
    const plan = { sampleSize: 80, accept: 2 }
    expect(producersRisk(plan, 0.01)).toBeCloseTo(1 - 0.95344681426406853, 12)
    expect(consumersRisk(plan, 0.065)).toBeCloseTo(0.10093654640578831, 12)
  })

  test.each([
    ['no sample', { sampleSize: 0, accept: 0 }],
    ['more accepted than sampled', { sampleSize: 5, accept: 6 }],
    ['a NaN acceptance number', { sampleSize: 5, accept: NaN }],
  ])('%s is refused', (_, plan) => {
    expect(() => acceptanceOfProcess(plan, 0.1)).toThrow(RangeError)
    expect(() => fractionAtAcceptance(plan, 0.1)).toThrow(RangeError)
    expect(() => outgoingQualityLimit(plan)).toThrow(RangeError)
  })
  test('a sample larger than the lot, or a plan that accepts all, has no curve', () => {
    expect(() => acceptanceOfLot({ sampleSize: 11, accept: 0 }, 10, 1)).toThrow('cannot exceed the lot size')
    expect(() => fractionAtAcceptance({ sampleSize: 5, accept: 5 }, 0.5)).toThrow('accepts every count')
  })
})

describe('double plans', () => {
  // Computed with scipy, the second sample inspected to its end.
  test.each(reference.double.rows)('$plan at $p', ({ plan, p, Pa, ASN }) => {
    const [firstSize, firstAccept, firstReject, secondSize, secondAccept, secondReject] = plan as [
      number,
      number,
      number,
      number,
      number,
      number,
    ]
    const found = doublePlanPerformance(
      { firstSize, firstAccept, firstReject, secondSize, secondAccept, secondReject },
      p,
    )
    expectClose(found.acceptance, Pa)
    expectClose(found.averageSample, ASN)
  })
  test('perfect work is accepted on the first sample, hopeless work rejected on it', () => {
    const plan = doublePlan('J', '1.5', 'normal')!
    expect(doublePlanPerformance(plan, 0)).toEqual({ acceptance: 1, averageSample: 50 })
    expect(doublePlanPerformance(plan, 1)).toEqual({ acceptance: 0, averageSample: 50 })
  })
  test('the largest tabled limits still work on their small samples', () => {
    const plan = doublePlan('B', '1000', 'normal')!
    expect(doublePlanPerformance(plan, 0.5).acceptance).toBe(1)
  })
})

describe('outgoing quality', () => {
  // Computed with scipy: lot 1000, 50 with 1/4, 50 more with 4/5.
  test.each([
    [0.01, 0.009421676291583757],
    [0.03, 0.02331485417599555],
    [0.05, 0.02238883600440394],
    [0.1, 0.00441475717586602],
  ])('of a double plan at %s', (fraction, outgoing) => {
    const plan = {
      firstSize: 50,
      firstAccept: 1,
      firstReject: 4,
      secondSize: 50,
      secondAccept: 4,
      secondReject: 5,
    }
    expectClose(doubleOutgoingFraction(plan, 1000, fraction), outgoing)
  })
  test('a lot that both samples use up lets nothing bad leave by the second', () => {
    const plan = doublePlan('J', '1.5', 'normal')!
    const both = plan.firstSize + plan.secondSize
    expect(doubleOutgoingFraction(plan, both, 0.5)).toBeLessThan(1e-9)
    expect(() => doubleOutgoingFraction(plan, both - 1, 0.1)).toThrow(RangeError)
  })
  test('of a variables plan: acceptance, fraction and what was not measured', () => {
    const plan = variablesPlan('F', '1.0', 'normal')
    const expected = (acceptanceByVariables(plan, 0.05) * 0.05 * (100 - plan.sampleSize)) / 100
    expect(variablesOutgoingFraction(plan, 100, 0.05)).toBeCloseTo(expected, 12)
    expect(variablesOutgoingFraction(plan, 100, 0)).toBe(0)
  })
  test.each(reference.outgoing.rows)('lot $N, sample $n, accept $Ac at $p', (row) => {
    const found = outgoingQuality({ sampleSize: row.n, accept: row.Ac }, row.N, row.p)
    expectClose(found.averageOutgoing, row.AOQ)
    expectClose(found.averageInspected, row.ATI)
  })
  test.each(reference.outgoingLimits.rows)('the limit of $n with $Ac', (row) => {
    const { incomingFraction, outgoingFraction } = outgoingQualityLimit({ sampleSize: row.n, accept: row.Ac })
    expectClose(outgoingFraction, row.AOQL)
    // The reference searched for the flat summit itself, which is good to half the digits only.
    expectClose(incomingFraction, row.p_max, 1e-6)
  })
  test('with none accepted the summit is at 1/(n + 1), in closed form', () => {
    expectClose(outgoingQualityLimit({ sampleSize: 80, accept: 0 }).incomingFraction, 1 / 81, 1e-12)
  })
})

describe('zero acceptance', () => {
  test.each(reference.zeroAcceptanceProcess.rows)('$ltpd at $confidence takes $n', (row) => {
    expect(zeroAcceptanceSample(row.ltpd, row.confidence)).toBe(row.n)
  })
  // Success run (classical, not the Bayesian variant that needs one less).
  test.each(reference.successRun.rows)('reliability $R at $C takes $n', (row) => {
    expect(zeroAcceptanceSample(1 - row.R, row.C)).toBe(row.n)
  })
  test.each(reference.zeroAcceptanceLot.rows)('lot $N with $D at $confidence takes $n', (row) => {
    expect(zeroAcceptanceSampleFromLot(row.N, row.D, row.confidence)).toBe(row.n)
  })
  test('a chance of exactly 0.1 is enough for 0.9: lot 20, one defective, 18', () => {
    expect(zeroAcceptanceSampleFromLot(20, 1, 0.9)).toBe(18)
  })
  test.each([
    ['nothing to catch', () => zeroAcceptanceSampleFromLot(20, 0, 0.9)],
    ['more to catch than the lot', () => zeroAcceptanceSampleFromLot(20, 21, 0.9)],
    ['certainty', () => zeroAcceptanceSampleFromLot(20, 1, 1)],
    ['a tolerable fraction of 0', () => zeroAcceptanceSample(0, 0.9)],
    ['a NaN fraction', () => zeroAcceptanceSample(NaN, 0.9)],
  ])('%s is refused', (_, call) => {
    expect(call).toThrow(RangeError)
  })
})

describe('what the sample proves', () => {
  // The tables of zero acceptance read the other way: lot 500, 25 to catch, 56 clean ones show fewer.
  test.each(reference.zeroAcceptanceLot.rows)('$n clean of $N rule out $D at $confidence', (row) => {
    const proved = (sampleSize: number) =>
      whatTheSampleProves({ lotSize: row.N, sampleSize, defectives: 0 }, row.confidence).lotDefectivesAtMost
    expect(proved(row.n)).toBeLessThan(row.D)
    if (row.n > 1 && row.n < row.N) expect(proved(row.n - 1)).toBeGreaterThanOrEqual(row.D)
  })
  // NIST/SEMATECH e-Handbook 7.2.4.1: 4 of 20, upper bound at 90 % two-sided = 95 % one-sided.
  test('the process bound is the exact binomial one', () => {
    const proof = whatTheSampleProves({ lotSize: 5000, sampleSize: 20, defectives: 4 }, 0.95)
    expect(proof.processFractionAtMost).toBeCloseTo(0.4010281173319745, 12)
    expect(proof.lotFractionAtMost).toBeCloseTo(0.401, 2)
  })
  // Computed with scipy's hypergeometric distribution: the least and the most bad pieces in the lot that
  // leave the sample likelier than 5 %.
  test.each([
    [120, 20, 18, 88, 117],
    [200, 20, 2, 4, 54],
  ])('%s with %s tried and %s bad: at least %s, at most %s', (lotSize, sampleSize, defectives, min, max) => {
    expect(whatTheSampleProves({ lotSize, sampleSize, defectives }, 0.95)).toMatchObject({
      lotDefectivesAtLeast: min,
      lotDefectivesAtMost: max,
    })
  })
  test('a lot inspected whole holds what was found', () => {
    const proof = whatTheSampleProves({ lotSize: 30, sampleSize: 30, defectives: 2 }, 0.99)
    expect(proof).toMatchObject({ lotDefectivesAtMost: 2, lotFractionAtMost: 2 / 30 })
  })
  test('a sample of nothing but defectives rules nothing out', () => {
    expect(whatTheSampleProves({ lotSize: 30, sampleSize: 5, defectives: 5 }, 0.9)).toMatchObject({
      lotDefectivesAtMost: 30,
      processFractionAtMost: 1,
    })
  })
  test.each([
    ['no sample', { lotSize: 30, sampleSize: 0, defectives: 0 }],
    ['a sample above the lot', { lotSize: 30, sampleSize: 31, defectives: 0 }],
    ['more defectives than the sample', { lotSize: 30, sampleSize: 5, defectives: 6 }],
    ['a NaN lot', { lotSize: NaN, sampleSize: 5, defectives: 0 }],
  ])('%s is refused', (_, sample) => {
    expect(() => whatTheSampleProves(sample, 0.9)).toThrow(RangeError)
  })
})

describe('variables plans', () => {
  // ANSI/ASQ Z1.9 table B-1, read in an excerpt.
  test('every constant read', () => {
    for (const letter of VARIABLES_LETTERS) {
      const row = reference.variablesPlans.rows[letter] as { n: number; k: Record<string, number> }
      for (const limit of VARIABLES_LIMITS) {
        const printed = row.k[limit]
        if (printed === undefined) continue
        expect(variablesPlan(letter, limit, 'normal'), `${letter} ${limit}`).toEqual({
          sampleSize: row.n,
          acceptabilityConstant: printed,
          how: 'read',
        })
      }
      if (row.k['T0.10'] !== undefined) {
        expect(variablesPlan(letter, '0.10', 'tightened').acceptabilityConstant).toBe(row.k['T0.10'])
      }
    }
  })
  test('tightened takes the column to the left', () => {
    expect(variablesPlan('J', '1.5', 'tightened')).toEqual(variablesPlan('J', '1.0', 'normal'))
  })
  test('an arrow leads to the next plan below with its own sample', () => {
    expect(variablesPlan('B', '1.0', 'normal')).toEqual({
      sampleSize: 4,
      acceptabilityConstant: 1.45,
      how: 'read',
    })
  })
  test('a constant that was computed says so', () => {
    expect(variablesPlan('J', '4.0', 'normal').how).toBe('computed')
  })
  test('the constant falls as the limit loosens and never falls as the sample grows', () => {
    for (const letter of VARIABLES_LETTERS) {
      const constants = VARIABLES_LIMITS.map(
        (limit) => variablesPlan(letter, limit, 'normal').acceptabilityConstant,
      )
      constants.slice(1).forEach((constant, index) => {
        const sameSample =
          variablesPlan(letter, VARIABLES_LIMITS[index]!, 'normal').sampleSize ===
          variablesPlan(letter, VARIABLES_LIMITS[index + 1]!, 'normal').sampleSize
        if (sameSample) expect(constant).toBeLessThan(constants[index]!)
      })
    }
    for (const limit of VARIABLES_LIMITS) {
      const plans = VARIABLES_LETTERS.map((letter) => variablesPlan(letter, limit, 'normal'))
      plans.slice(1).forEach((plan, index) => {
        expect(plan.sampleSize).toBeGreaterThanOrEqual(plans[index]!.sampleSize)
        expect(plan.acceptabilityConstant).toBeGreaterThanOrEqual(plans[index]!.acceptabilityConstant)
      })
    }
  })

  // MIL-STD-414 example B-1 (from memory, arithmetic recomputed): 1.59 against 1.53 accepts.
  test('the standard’s five readings below 209', () => {
    const { readings, upper, letter, limit, k, qualityIndex } = reference.variablesExample
    const plan = variablesPlan(letter as 'D', limit as '1.0', 'normal')
    expect(plan).toMatchObject({ sampleSize: 5, acceptabilityConstant: k })
    const judged = judgeVariables(plan, readings, { side: 'upper', value: upper })
    expect(judged).toMatchObject({ mean: 195, accepted: true })
    expect(judged.qualityIndex).toBeCloseTo(qualityIndex, 12)
    expect(judgeVariables(plan, readings, { side: 'upper', value: 208 }).accepted).toBe(false)
    const mirrored = readings.map((reading) => -reading)
    expect(judgeVariables(plan, mirrored, { side: 'lower', value: -upper }).qualityIndex).toBe(
      judged.qualityIndex,
    )
  })
  test('readings without spread are judged by their side of the limit', () => {
    const plan = { sampleSize: 3, acceptabilityConstant: 1.12 }
    expect(judgeVariables(plan, [5, 5, 5], { side: 'upper', value: 6 }).accepted).toBe(true)
    expect(judgeVariables(plan, [5, 5, 5], { side: 'upper', value: 4 }).accepted).toBe(false)
    expect(() => judgeVariables(plan, [5, 5, 5], { side: 'upper', value: 5 })).toThrow('finer instrument')
  })
  test.each([
    ['too few readings', [1, 2]],
    ['a reading that is no number', [1, 2, NaN]],
  ])('%s are refused', (_, readings) => {
    const plan = { sampleSize: 3, acceptabilityConstant: 1.12 }
    expect(() => judgeVariables(plan, readings, { side: 'upper', value: 6 })).toThrow(RangeError)
  })

  // Noncentral t identity, computed with scipy.
  test.each(reference.variables.rows)('$n with $k at $p', ({ n, k, p, Pa }) => {
    expectClose(acceptanceByVariables({ sampleSize: n, acceptabilityConstant: k }, p), Pa)
  })
  test('nothing beyond the limit is always accepted, everything never', () => {
    const plan = { sampleSize: 5, acceptabilityConstant: 1.53 }
    expect([0, 1].map((fraction) => acceptanceByVariables(plan, fraction))).toEqual([1, 0])
  })
})

test('the columns of the variables table are columns of the attribute tables too', () => {
  for (const limit of VARIABLES_LIMITS) expect(ACCEPTANCE_QUALITY_LIMITS).toContain(limit)
})
