import { describe, expect, test } from 'vitest'
import {
  cyclesAtShareFailed,
  engelmaierExponent,
  leadlessShearStrain,
  medianCyclesToFailure,
} from '@/shared/reliability/models/engelmaier'
import { humidityFactorRange } from '@/shared/reliability/models/humidity-range'
import { equivalentCycles } from '@/shared/reliability/models/mixed-swings'
import { NORRIS_LANDZBERG, norrisLandzberg } from '@/shared/reliability/models/norris-landzberg'
import { USE_ENVIRONMENTS } from '@/shared/reliability/models/use-environments'
import reference from '@/tests/reference/statistics/reliability.json'

const [tinLead, tinSilverCopper] = NORRIS_LANDZBERG

describe('Norris–Landzberg', () => {
  // Test 0 to 100 °C, 48 cycles a day, dwell 10 min; use swing 35 K to 60 °C, once a day, dwell 12 h.
  // Terms computed independently from the constants of the FIDES Guide (tin–lead) and of Pan 2005.
  const test1 = { swingK: 100, maximumC: 100, cyclesPerDay: 48, dwellMin: 10 }
  const use1 = { swingK: 35, maximumC: 60, cyclesPerDay: 1, dwellMin: 720 }

  test('tin–lead: 7.3497 × 0.2752 × 1.5761 = 3.1875', () => {
    const found = norrisLandzberg(tinLead, { test: test1, use: use1 })
    expect(found.swingTerm).toBeCloseTo(7.349719, 5)
    expect(found.slownessTerm).toBeCloseTo(0.275161, 6)
    expect(found.temperatureTerm).toBeCloseTo(1.576132, 6)
    expect(found.factor).toBeCloseTo(3.187495, 5)
    expect(7300 / found.factor).toBeCloseTo(2290.2, 3)
  })

  test('tin–silver–copper by dwell 18.237, by frequency 19.271', () => {
    const byDwell = norrisLandzberg(tinSilverCopper, { test: test1, use: use1 }, 'dwell')
    expect(byDwell.swingTerm).toBeCloseTo(16.151754, 5)
    expect(byDwell.slownessTerm).toBeCloseTo(0.558988, 6)
    expect(byDwell.temperatureTerm).toBeCloseTo(2.01991, 5)
    expect(byDwell.factor).toBeCloseTo(18.237049, 5)
    expect(7300 / byDwell.factor).toBeCloseTo(400.284059, 4)
    expect(norrisLandzberg(tinSilverCopper, { test: test1, use: use1 }).factor).toBeCloseTo(19.270944, 5)
  })

  // Published elsewhere with the frequency term inverted, 69.0; FIDES Guide eq. 1.72, the fit of Yang,
  // Life Cycle Reliability Engineering, example 7.2 (+0.3452 ln f) and the 2005 paper all go this way: 5.22.
  test('−55/125 °C at 48 a day against 25/75 °C daily: 5.22, not 69', () => {
    const found = norrisLandzberg(tinLead, {
      test: { swingK: 180, maximumC: 125, cyclesPerDay: 48 },
      use: { swingK: 50, maximumC: 75, cyclesPerDay: 1 },
    })
    expect(found.swingTerm).toBeCloseTo(11.4018, 4)
    expect(found.temperatureTerm).toBeCloseTo(1.66536, 5)
    expect(found.factor).toBeCloseTo(5.2248, 4)
    expect(found.factor / found.slownessTerm ** 2).toBeCloseTo(69.008, 2)
  })

  test('a faster test accelerates less, and the result says so', () => {
    const factorAt = (cyclesPerDay: number) =>
      norrisLandzberg(tinLead, { test: { ...test1, cyclesPerDay }, use: use1 })
    expect(factorAt(96).factor).toBeLessThan(factorAt(48).factor)
    expect(factorAt(48).direction).toContain('slower cycle does more damage')
    expect(factorAt(48).model).toMatchObject({ name: 'Norris–Landzberg', edition: 'tin–lead' })
  })

  test('missing dwells, and cycles of nothing, are refused', () => {
    const noDwell = { swingK: 35, maximumC: 60, cyclesPerDay: 1 }
    expect(() => norrisLandzberg(tinLead, { test: test1, use: noDwell }, 'dwell')).toThrow('dwell')
    expect(() => norrisLandzberg(tinLead, { test: test1, use: { ...use1, swingK: 0 } })).toThrow(RangeError)
    expect(() => norrisLandzberg(tinLead, { test: test1, use: { ...use1, maximumC: -300 } })).toThrow(
      RangeError,
    )
  })
})

describe('Engelmaier', () => {
  // First row read in a secondary copy of the paper, the others computed from its equations.
  test.each(reference.engelmaier.rows)('$Tsj °C, dwell $tD min, strain $dgamma', (row) => {
    const exponent = engelmaierExponent(row.Tsj, row.tD)
    expect(exponent).toBeCloseTo(row.c, 12)
    expect(medianCyclesToFailure(row.dgamma, exponent) / row.N50).toBeCloseTo(1, 10)
  })

  test('a strain of twice the ductility fails in half a cycle', () => {
    expect(medianCyclesToFailure(0.65, -0.42)).toBeCloseTo(0.5, 12)
  })

  test('strain of a leadless joint: 14 ppm/K over 100 K, 10 mm by 0.5 mm, 0.028', () => {
    const joint = { halfSpanMm: 10, heightMm: 0.5, expansionMismatchPpmPerK: 17 - 3, swingK: 100 }
    expect(leadlessShearStrain(joint)).toBeCloseTo(0.028, 12)
    expect(leadlessShearStrain({ ...joint, swingK: -100, correction: 0.5 })).toBeCloseTo(0.014, 12)
  })

  test('spread about the median: 0.1096 at 0.01 %, shape 4; 0.1204 at 1 %, shape 2', () => {
    expect(cyclesAtShareFailed(1, 1e-4, 4)).toBeCloseTo(0.10959710025695173, 12)
    expect(cyclesAtShareFailed(1, 0.01, 2)).toBeCloseTo(0.12041415903088429, 12)
    expect(cyclesAtShareFailed(500, 0.5, 3)).toBeCloseTo(500, 9)
  })

  test('no dwell, no strain and a positive exponent are refused', () => {
    expect(() => engelmaierExponent(55, 0)).toThrow(RangeError)
    expect(() => medianCyclesToFailure(0, -0.4)).toThrow(RangeError)
    expect(() => medianCyclesToFailure(0.1, 0.4)).toThrow(RangeError)
  })
})

describe('mixed swings and environments', () => {
  // Palmgren–Miner over Coffin–Manson, computed: five years under the hood as cycles of 60 K.
  test('under the hood: 9959.6 cycles of 60 K', () => {
    const hood = USE_ENVIRONMENTS.find(({ name }) => name.includes('hood'))!
    const mixture = hood.cycles.map(({ swingK, perYear }) => ({ swingK, cycles: perYear * 5 }))
    expect(equivalentCycles(mixture, 60)).toBeCloseTo(9959.595682689855, 6)
  })

  test('every environment has a source, and swings within its temperatures', () => {
    for (const { name, cycles, coldestC, hottestC, source } of USE_ENVIRONMENTS) {
      expect(source.cite, name).toContain('IPC-SM-785')
      for (const { swingK } of cycles) expect(swingK, name).toBeLessThanOrEqual(hottestC - coldestC)
    }
  })

  test('swings below zero are refused', () => {
    expect(() => equivalentCycles([{ swingK: -1, cycles: 1 }], 60)).toThrow(RangeError)
  })
})

test('heat and moisture: 85 °C/85 % against 30 °C/60 % is a range, 262.6 to 564.3', () => {
  // Computed from the two sets (Hallberg–Peck exponent read, the rest from memory).
  const found = humidityFactorRange({
    use: { temperatureC: 30, relativeHumidityPct: 60 },
    test: { temperatureC: 85, relativeHumidityPct: 85 },
  })
  expect(found.max).toBeCloseTo(564.3, 1)
  expect(found.min).toBeCloseTo(262.6, 1)
  expect(found.byModel).toHaveLength(2)
})
