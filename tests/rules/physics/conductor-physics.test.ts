import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { SPACING_TABLES } from '@/shared/materials/conductor-spacings'
import {
  currentByIpc2152,
  currentByIpc2221,
  riseByIpc2152,
  riseByIpc2221,
  widthByIpc2152,
  widthByIpc2221,
} from '@/shared/physics/conductor-current'
import { conductorResistanceOhm } from '@/shared/physics/conductor-resistance'
import { minSpacingMm } from '@/shared/physics/conductor-spacing'

const MIL = 0.0254
/** One ounce as the laws count it: 1.378 mil. */
const OUNCE_UM = 1.378 * 25.4
const twentyMil = (layer: 'external' | 'internal') => ({ layer, widthMm: 20 * MIL, copperUm: OUNCE_UM })

describe('IPC-2221 current fit', () => {
  // Computed from the published fit; 11.8 and 30.8 mil are widely published for 1 A, 10 K, 1 oz.
  test.each([
    ['external', 11.826],
    ['internal', 30.764],
  ] as const)('1 A at 10 K in one ounce, %s: %s mil', (layer, mil) => {
    expect(widthByIpc2221({ layer, copperUm: OUNCE_UM }, 1, 10) / MIL).toBeCloseTo(mil, 2)
  })
  test.each([
    ['external', 10, 1.46367],
    ['internal', 10, 0.73184],
    ['external', 20, 1.98562],
  ] as const)('20 mil of one ounce, %s, %i K: %s A', (layer, riseK, ampere) => {
    expect(currentByIpc2221(twentyMil(layer), riseK)).toBeCloseTo(ampere, 4)
  })
})

describe('IPC-2152 fit', () => {
  // Unit test published with an open-source track calculator: 20 mil, 1.378 mil, 10 K.
  test.each([
    ['external', 1.4164291025677085],
    ['internal', 1.513124408404138],
  ] as const)('20 mil of one ounce, %s, at 10 K: %s A', (layer, ampere) => {
    expect(currentByIpc2152(twentyMil(layer), 10)).toBeCloseTo(ampere, 8)
  })
})

test('current, rise and width undo each other in both fits', () => {
  const conductor = fc.record({
    layer: fc.constantFrom('external', 'internal'),
    widthMm: fc.double({ min: 0.1, max: 10, noNaN: true }),
    copperUm: fc.double({ min: 12, max: 210, noNaN: true }),
  })
  fc.assert(
    fc.property(conductor, fc.double({ min: 0.01, max: 30, noNaN: true }), (track, ampere) => {
      const byChart = riseByIpc2221(track, ampere)
      expect(currentByIpc2221(track, byChart) / ampere).toBeCloseTo(1, 9)
      expect(widthByIpc2221(track, ampere, byChart) / track.widthMm).toBeCloseTo(1, 9)
      const byData = riseByIpc2152(track, ampere)
      expect(currentByIpc2152(track, byData) / ampere).toBeCloseTo(1, 9)
      expect(widthByIpc2152(track, ampere, byData) / track.widthMm).toBeCloseTo(1, 9)
    }),
  )
})

describe('resistance', () => {
  // Published lesson: 100 mm of 0.5 mm, 35 µm, 1.72·10⁻⁸ Ω·m: 98.3 mΩ (98.2857 exactly).
  test('gives the published 98.3 mΩ cold', () => {
    const track = { lengthMm: 100, widthMm: 0.5, copperUm: 35 }
    expect(conductorResistanceOhm(track, 20, 1.72e-8) * 1e3).toBeCloseTo(98.2857, 4)
  })
  // The same track at 85 °C with 1.724·10⁻⁸ and 0.00393/K from 20 °C: 123.68 mΩ (computed).
  test('gives 123.68 mΩ at 85 °C', () => {
    expect(conductorResistanceOhm({ lengthMm: 100, widthMm: 0.5, copperUm: 35 }, 85) * 1e3).toBeCloseTo(
      123.68,
      2,
    )
  })
})

describe('least spacing', () => {
  // IPC-2221 table carried on to 600 V: the B1 case is published, the rest computed from the table.
  test.each([
    ['B1', 0.5],
    ['B2', 3.0],
    ['B3', 15.0],
    ['B4', 1.105],
    ['A6', 1.805],
  ] as const)('at 600 V %s asks %s mm', (category, mm) => {
    expect(minSpacingMm(SPACING_TABLES['ipc-2221'], category, 600)).toBeCloseTo(mm, 9)
  })
  test('a voltage between two rows takes the higher row', () => {
    expect(minSpacingMm(SPACING_TABLES['ipc-2221'], 'B2', 30)).toBe(0.1)
    expect(minSpacingMm(SPACING_TABLES['ipc-2221'], 'B2', 30.5)).toBe(0.6)
  })
  test.each([-1, Number.NaN])('%s V is refused', (peakV) => {
    expect(() => minSpacingMm(SPACING_TABLES['ipc-2221'], 'B1', peakV)).toThrow(RangeError)
  })
})
