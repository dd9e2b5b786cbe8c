import { describe, expect, test } from 'vitest'
import { HUMIDITY_MODELS, arrheniusFactor, humidityFactor } from '@/shared/physics/acceleration-factor'

describe('the Arrhenius factor', () => {
  // NIST/SEMATECH e-Handbook 8.1.5.1 prints 133 and 17,597 for 25 to 125 °C; it takes 273.16 and
  // k = 8.617e-5, hence the comparison at 0.3 % and 0.1 %.
  test.each([
    [0.5, 133, 0.003],
    [1.0, 17_597, 0.001],
  ])('at %s eV from 25 to 125 °C is %s', (energy, published, tolerance) => {
    const factor = arrheniusFactor(energy, { useC: 25, testC: 125 })
    expect(Math.abs(factor / published - 1)).toBeLessThan(tolerance)
  })
  // Published worked examples of the same formula: 0.7 eV, 90 to 150 °C, 23.85; 0.5 eV, 40 to
  // 125 °C, 52 (printed rounded; 52.24 recomputed); 0.7 eV, 55 to 125 °C, 77.7 (from memory).
  test.each([
    [0.7, 90, 150, 23.85, 0.01],
    [0.5, 40, 125, 52.24, 0.02],
    [0.7, 55, 125, 77.7, 0.06],
  ])('at %s eV from %s to %s °C is %s', (energy, useC, testC, published, tolerance) => {
    expect(Math.abs(arrheniusFactor(energy, { useC, testC }) - published)).toBeLessThan(tolerance)
  })
  test('is 1 when nothing is accelerated, and below 1 when the test is cooler', () => {
    expect(arrheniusFactor(0.7, { useC: 55, testC: 55 })).toBe(1)
    expect(arrheniusFactor(0.7, { useC: 55, testC: 25 })).toBeLessThan(1)
  })
  test('refuses an impossible energy or temperature', () => {
    expect(() => arrheniusFactor(0, { useC: 25, testC: 125 })).toThrow(RangeError)
    expect(() => arrheniusFactor(Number.NaN, { useC: 25, testC: 125 })).toThrow(RangeError)
    expect(() => arrheniusFactor(0.7, { useC: -300, testC: 125 })).toThrow(RangeError)
  })
})

describe('the factor for heat and moisture', () => {
  const chamber = { temperatureC: 85, relativeHumidityPct: 85 }
  // Hallberg and Peck 1991 (exponent published, energy from memory) and Peck 1986 (from memory):
  // 564.3 and 262.6 at 30 °C 60 %, 1737.7 and 708.1 at 25 °C 50 %, computed apart from this code.
  test.each([
    [0, 30, 60, 564.3],
    [1, 30, 60, 262.6],
    [0, 25, 50, 1737.7],
    [1, 25, 50, 708.1],
  ] as const)(
    'set %s from %s °C and %s%% RH to 85/85: %s',
    (set, temperatureC, relativeHumidityPct, expected) => {
      const factor = humidityFactor(HUMIDITY_MODELS[set], {
        use: { temperatureC, relativeHumidityPct },
        test: chamber,
      })
      expect(Math.abs(factor / expected - 1)).toBeLessThan(5e-4)
    },
  )
  test.each([0, -5, 101, Number.NaN])('refuses %s % relative humidity', (relativeHumidityPct) => {
    expect(() =>
      humidityFactor(HUMIDITY_MODELS[0], { use: { temperatureC: 30, relativeHumidityPct }, test: chamber }),
    ).toThrow(RangeError)
  })
})
