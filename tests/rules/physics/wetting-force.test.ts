import { describe, expect, test } from 'vitest'
import {
  buoyancyMN,
  contactAngleDeg,
  tensionMN,
  theoreticalForceMN,
  type ImmersedSpecimen,
} from '@/shared/physics/wetting-force'

const wire = (diameterMm: number, depthMm = 4): ImmersedSpecimen => ({
  perimeterMm: Math.PI * diameterMm,
  sectionMm2: (Math.PI / 4) * diameterMm ** 2,
  depthMm,
  surfaceTensionNPerM: 0.4,
  densityGPerMl: 8,
})

// Copper wires 4 mm deep and coupons, γ 0.4 N/m, ρ 8000 kg/m³, g 9.80665: arithmetic on the
// force balance of IEC 60068-2-69 made apart from this code (computed; no published example was found).
describe('the force balance on a wire', () => {
  test.each([
    [0.6, 0.754, 0.0887, 0.6653],
    [0.8, 1.0053, 0.1577, 0.8476],
    [1.0, 1.2566, 0.2465, 1.0102],
  ])('%s mm: pull %s mN, buoyancy %s mN, most %s mN', (diameter, pull, buoyancy, max) => {
    expect(tensionMN(wire(diameter))).toBeCloseTo(pull, 3)
    expect(buoyancyMN(wire(diameter))).toBeCloseTo(buoyancy, 3)
    expect(theoreticalForceMN(wire(diameter))).toBeCloseTo(max, 3)
  })

  test.each([
    [0.7, 31.44],
    [0.5, 49.14],
  ])('0.8 mm wire at %s mN stands at %s°', (force, angle) => {
    expect(contactAngleDeg(force, wire(0.8))).toBeCloseTo(angle, 1)
  })
})

describe('the force balance on coupons', () => {
  const coupon = (thicknessMm: number, depthMm: number): ImmersedSpecimen => ({
    ...wire(1),
    perimeterMm: 2 * (10 + thicknessMm),
    sectionMm2: 10 * thicknessMm,
    depthMm,
  })
  test('10 × 0.5 mm, 4 mm deep', () => {
    expect(theoreticalForceMN(coupon(0.5, 4))).toBeCloseTo(6.831, 3)
    expect(contactAngleDeg(5, coupon(0.5, 4))).toBeCloseTo(38.55, 1)
    expect(contactAngleDeg(4, coupon(0.5, 4))).toBeCloseTo(48.47, 1)
  })
  test.each([
    [4, 5.021, 4.259],
    [2, 2.511, 6.7695],
  ])('10 × 1.6 mm board, %s mm deep: buoyancy eats %s mN and leaves %s mN', (depth, buoyancy, max) => {
    expect(buoyancyMN(coupon(1.6, depth))).toBeCloseTo(buoyancy, 3)
    expect(theoreticalForceMN(coupon(1.6, depth))).toBeCloseTo(max, 3)
  })
})

describe('the contact angle', () => {
  test('is 90° on the buoyancy line, not on the zero line', () => {
    expect(contactAngleDeg(-buoyancyMN(wire(0.8)), wire(0.8))).toBeCloseTo(90, 9)
    expect(contactAngleDeg(0, wire(0.8))).toBeLessThan(90)
  })
  test('is 0° at the greatest force, and undefined beyond it', () => {
    expect(contactAngleDeg(theoreticalForceMN(wire(0.8)), wire(0.8))).toBeCloseTo(0, 5)
    expect(contactAngleDeg(theoreticalForceMN(wire(0.8)) * 1.01, wire(0.8))).toBeUndefined()
  })
  test('of a force that is no number is undefined', () => {
    expect(contactAngleDeg(Number.NaN, wire(0.8))).toBeUndefined()
  })
  test.each(['perimeterMm', 'sectionMm2', 'depthMm', 'surfaceTensionNPerM', 'densityGPerMl'] as const)(
    'needs a %s greater than zero',
    (field) => {
      expect(() => contactAngleDeg(0.5, { ...wire(0.8), [field]: 0 })).toThrow(RangeError)
      expect(() => contactAngleDeg(0.5, { ...wire(0.8), [field]: Number.NaN })).toThrow(RangeError)
    },
  )
})
