import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { additionPerLitre, densityAtReference, exchangePerLitre } from '@/shared/physics/flux-density'

describe('density brought to the reference temperature', () => {
  // Common practice, no published source: 0.00085 g/ml per K; 0.805 at 30 °C is 0.809 at 25 °C.
  test('0.805 g/ml read at 30 °C is 0.809 g/ml at 25 °C', () => {
    const at25 = densityAtReference({
      densityGPerMl: 0.805,
      temperatureC: 30,
      referenceC: 25,
      coefficientGPerMlPerK: 0.00085,
    })
    expect(at25).toBeCloseTo(0.80925, 9)
    expect(at25.toFixed(3)).toBe('0.809')
  })
  test('a reading without temperature is refused', () => {
    expect(() =>
      densityAtReference({
        densityGPerMl: 0.8,
        temperatureC: Number.NaN,
        referenceC: 25,
        coefficientGPerMlPerK: 0.001,
      }),
    ).toThrow(/temperature/)
  })
})

describe('thinner to add', () => {
  // Worked example by balance of masses (published with flux equipment): flux 0.84 to 0.82 with thinner 0.79.
  test('a litre at 0.84 needs two thirds of a litre at 0.79 to reach 0.82', () => {
    expect(additionPerLitre({ foundGPerMl: 0.84, targetGPerMl: 0.82, addedGPerMl: 0.79 })).toBeCloseTo(
      2 / 3,
      9,
    )
  })
  // Inputs of the second published example; the answer computed from the balance.
  test('exchange at constant volume, 0.835 to 0.825, takes 0.2222 of the flux', () => {
    expect(exchangePerLitre({ foundGPerMl: 0.835, targetGPerMl: 0.825, addedGPerMl: 0.79 })).toBeCloseTo(
      0.2222222,
      6,
    )
  })
  test('on target nothing is added', () => {
    expect(additionPerLitre({ foundGPerMl: 0.82, targetGPerMl: 0.82, addedGPerMl: 0.79 })).toBe(0)
    expect(exchangePerLitre({ foundGPerMl: 0.82, targetGPerMl: 0.82, addedGPerMl: 0.79 })).toBe(0)
  })
  test('thinner denser than the target cannot thin, and a flux too thin is not mended with thinner', () => {
    expect(() => additionPerLitre({ foundGPerMl: 0.84, targetGPerMl: 0.82, addedGPerMl: 0.83 })).toThrow(
      RangeError,
    )
    expect(() => additionPerLitre({ foundGPerMl: 0.81, targetGPerMl: 0.82, addedGPerMl: 0.79 })).toThrow(
      RangeError,
    )
    expect(() => additionPerLitre({ foundGPerMl: 0.84, targetGPerMl: 0.82, addedGPerMl: 0.82 })).toThrow(
      RangeError,
    )
  })
  test('fresh, denser flux mends a flux that is too thin', () => {
    const litres = additionPerLitre({ foundGPerMl: 0.81, targetGPerMl: 0.82, addedGPerMl: 0.85 })
    expect((0.81 + 0.85 * litres) / (1 + litres)).toBeCloseTo(0.82, 12)
  })
  test('law: the blend has the target density, added or exchanged', () => {
    const rising = fc
      .tuple(
        fc.double({ min: 0.7, max: 0.8, noNaN: true }),
        fc.double({ min: 0.001, max: 0.1, noNaN: true }),
        fc.double({ min: 0.001, max: 0.1, noNaN: true }),
      )
      .map(([thinner, first, second]) => ({
        addedGPerMl: thinner,
        targetGPerMl: thinner + first,
        foundGPerMl: thinner + first + second,
      }))
    fc.assert(
      fc.property(rising, (densities) => {
        const { foundGPerMl, addedGPerMl, targetGPerMl } = densities
        const x = additionPerLitre(densities)
        expect((foundGPerMl + x * addedGPerMl) / (1 + x)).toBeCloseTo(targetGPerMl, 9)
        const y = exchangePerLitre(densities)
        expect(foundGPerMl * (1 - y) + y * addedGPerMl).toBeCloseTo(targetGPerMl, 9)
      }),
    )
  })
})
