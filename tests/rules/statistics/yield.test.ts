import { describe, expect, test } from 'vitest'
import { defectsPerMillionOpportunities } from '@/shared/statistics/yield/defects-per-opportunity'
import { defectsPerUnit, sigmaLevel } from '@/shared/statistics/yield/defects-per-opportunity'
import { boardYieldFromJointDefects } from '@/shared/statistics/yield/joint-defects-and-board-yield'
import { jointDefectsPerMillionFromYield } from '@/shared/statistics/yield/joint-defects-and-board-yield'
import {
  firstPassYield,
  firstPassYieldFromDefects,
  rolledYield,
} from '@/shared/statistics/yield/process-yield'
import reference from '@/tests/reference/statistics/yield.json'

// Definitions in common use, computed with scipy.
test('34 defects on 750 units of 10 opportunities', () => {
  const { defects, units, opportunities, ...values } = reference.counted
  const perUnit = defectsPerUnit({ defects, units })
  const perMillion = defectsPerMillionOpportunities({ defects, units, opportunitiesPerUnit: opportunities })
  expect(perUnit).toBeCloseTo(values.DPU, 15)
  expect(perMillion).toBeCloseTo(values.DPMO, 9)
  expect(firstPassYieldFromDefects(perUnit)).toBeCloseTo(values.FTY_poisson, 14)
  expect(sigmaLevel(perMillion, 0)).toBeCloseTo(values.z_lt, 12)
  expect(sigmaLevel(perMillion)).toBeCloseTo(values['sigma_level_1.5'], 12)
})

test.each(reference.sigmaLevels)('$DPMO per million', (row) => {
  expect(sigmaLevel(row.DPMO, 0)).toBeCloseTo(row.z, 11)
  expect(sigmaLevel(row.DPMO)).toBeCloseTo(row['sigma_1.5'], 11)
})

test('four steps roll into 0.8940393', () => {
  expect(rolledYield(reference.steps.steps)).toBeCloseTo(reference.steps.RTY, 14)
  expect(rolledYield(reference.steps.steps)).toBeCloseTo(Math.exp(-reference.steps.TDPU), 14)
})

test('first-pass yield leaves the reworked out', () => {
  const { passed_first, entered, FPY } = reference.firstPass
  expect(firstPassYield(passed_first, entered)).toBe(FPY)
})

describe('joints and boards', () => {
  // By hand: −ln 0.9 / 1000 = 105.36052 millionths, less half its square (0.00555): 105.35497 per million.
  test('90 % of boards of 1000 joints good means 105 defective joints per million', () => {
    expect(jointDefectsPerMillionFromYield(0.9, 1000)).toBeCloseTo(105.35497, 4)
    expect(boardYieldFromJointDefects(105.35497, 1000)).toBeCloseTo(0.9, 6)
  })
  test('a perfect yield leaves no defects, a yield of 0 says nothing', () => {
    expect(jointDefectsPerMillionFromYield(1, 1000)).toBe(0)
    expect(() => jointDefectsPerMillionFromYield(0, 1000)).toThrow('sets no limit')
  })
})

test.each([
  ['no units', () => defectsPerUnit({ defects: 1, units: 0 })],
  ['half a defect', () => defectsPerUnit({ defects: 0.5, units: 2 })],
  [
    'no opportunities',
    () => defectsPerMillionOpportunities({ defects: 1, units: 2, opportunitiesPerUnit: 0 }),
  ],
  ['a rate above a million', () => sigmaLevel(2e6)],
  ['a rate of zero', () => sigmaLevel(0)],
  ['no steps', () => rolledYield([])],
  ['a yield above 1', () => rolledYield([0.9, 1.1])],
  ['a NaN yield', () => rolledYield([NaN])],
  ['more passed than entered', () => firstPassYield(11, 10)],
  ['no joints', () => jointDefectsPerMillionFromYield(0.9, 0)],
  ['negative defects per unit', () => firstPassYieldFromDefects(-1)],
])('%s is refused', (_, call) => {
  expect(call).toThrow(RangeError)
})
