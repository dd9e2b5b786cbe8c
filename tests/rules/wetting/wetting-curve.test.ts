import { describe, expect, test } from 'vitest'
import type { Readings } from '@/shared/records/readings'
import { wettingCurveMarks, type CurveConditions } from '@/shared/wetting/wetting-curve'
import { buoyancyMN, contactAngleDeg, theoreticalForceMN } from '@/shared/physics/wetting-force'

const conditions: CurveConditions = {
  perimeterMm: Math.PI * 0.8,
  sectionMm2: (Math.PI / 4) * 0.64,
  depthMm: 4,
  immersionSpeedMmPerS: 40,
  surfaceTensionNPerM: 0.4,
  densityGPerMl: 8,
  forceSign: 'down-positive',
}

const curve = (...points: readonly (readonly [number, number])[]): Readings => ({
  count: points.length,
  columns: {
    specimen: points.map(() => 'w1'),
    timeS: points.map(([time]) => time),
    forceMN: points.map(([, force]) => force),
  },
})

// A curve of straight lines, so that every mark can be worked out by hand: pushed up at −0.20 mN
// until 0.4 s, then rising 1 mN/s to 0.70 mN at 1.3 s, held to 2 s, falling to 0.60 mN at 6 s.
const good = curve([0, 0], [0.1, -0.2], [0.4, -0.2], [1.3, 0.7], [2, 0.7], [6, 0.6])

describe('the marks of a curve made of straight lines', () => {
  const [marks] = wettingCurveMarks(good, conditions)
  test('crosses the buoyancy line before the zero line', () => {
    // 0.8 mm wire, 4 mm deep: buoyancy 0.1577 mN.
    expect(marks?.buoyancyLineMN).toBeCloseTo(-0.1577, 3)
    expect(marks?.buoyancyCrossS).toBeCloseTo(0.4 + (0.2 - buoyancyMN(conditions)), 9)
    expect(marks?.zeroCrossS).toBeCloseTo(0.6, 9)
  })
  test('reads the force at 2 s and 5 s', () => {
    expect(marks?.forceAt2sMN).toBe(0.7)
    expect(marks?.forceAt5sMN).toBeCloseTo(0.625, 9)
  })
  test('finds the peak and two thirds of it, and of the theoretical force', () => {
    expect(marks?.peakMN).toBe(0.7)
    expect(marks?.peakAtS).toBe(1.3)
    expect(marks?.twoThirdsOfPeakS).toBeCloseTo(0.6 + (2 / 3) * 0.7, 9)
    expect(marks?.twoThirdsOfTheoreticalS).toBeCloseTo(0.6 + (2 / 3) * theoreticalForceMN(conditions), 9)
  })
  test('gives 31.44° at 0.70 mN', () => {
    expect(marks?.angleAt2sDeg).toBeCloseTo(31.44, 1)
    expect(marks?.angleAtPeakDeg).toBe(contactAngleDeg(0.7, conditions))
  })
  test('counts dewetting from the buoyancy line', () => {
    expect(marks?.dewettingDropPct).toBeCloseTo((100 * 0.1) / (0.7 + buoyancyMN(conditions)), 6)
  })
  test('takes the area above the buoyancy line to 5 s', () => {
    const underCurve = -0.01 - 0.06 + 0.25 * 0.9 + 0.7 * 0.7 + 0.6625 * 3
    expect(marks?.areaTo5sMNs).toBeCloseTo(underCurve + 5 * buoyancyMN(conditions), 9)
  })
})

describe('conventions', () => {
  test('a balance that draws the curve upside down gives the same marks', () => {
    const flipped = curve([0, 0], [0.1, 0.2], [0.4, 0.2], [1.3, -0.7], [2, -0.7], [6, -0.6])
    const [upright] = wettingCurveMarks(good, conditions)
    const [turned] = wettingCurveMarks(flipped, { ...conditions, forceSign: 'up-positive' })
    expect(turned?.zeroCrossS).toBe(upright?.zeroCrossS)
    expect(turned?.peakMN).toBe(upright?.peakMN)
  })
  test('the clock starts at contact', () => {
    const later = curve([0, 0], [3, 0], [3.1, -0.2], [3.4, -0.2], [4.3, 0.7], [5, 0.7], [9, 0.6])
    expect(wettingCurveMarks(later, { ...conditions, contactAtS: 3 })[0]?.zeroCrossS).toBeCloseTo(0.6, 9)
  })
  test('the movement downwards carries no mark', () => {
    const jerk = curve([0, 0.9], [0.1, -0.2], [1, -0.1], [3, -0.1])
    expect(wettingCurveMarks(jerk, conditions)[0]?.peakMN).toBe(-0.1)
  })
  test('specimens are told apart, even when their samples are mixed and out of order', () => {
    const mixed: Readings = {
      count: 4,
      columns: { specimen: ['a', 'b', 'b', 'a'], timeS: [1, 2, 1, 2], forceMN: [0.1, 0.4, -0.3, 0.2] },
    }
    const marks = wettingCurveMarks(mixed, conditions)
    expect(marks.map((one) => [one.specimen, one.forceAt2sMN])).toEqual([
      ['a', 0.2],
      ['b', 0.4],
    ])
  })
})

describe('curves that do not wet', () => {
  const never = wettingCurveMarks(curve([0, 0], [0.1, -0.5], [3, -0.5], [6, -0.4]), conditions)[0]
  test('cross nothing, and have no dewetting to measure', () => {
    expect(never?.buoyancyCrossS).toBeUndefined()
    expect(never?.zeroCrossS).toBeUndefined()
    expect(never?.dewettingDropPct).toBeUndefined()
    expect(never?.areaTo5sMNs).toBeLessThan(0)
  })
  test('stand beyond 90°', () => {
    expect(never?.angleAt2sDeg).toBeGreaterThan(90)
  })
  test('a curve that ends early has no force at 5 s', () => {
    expect(wettingCurveMarks(curve([0, 0], [3, 0.5]), conditions)[0]?.forceAt5sMN).toBeUndefined()
  })
  test('no readings, no curves', () => {
    expect(wettingCurveMarks({ count: 0, columns: {} }, conditions)).toEqual([])
  })
  test('a speed of zero is refused', () => {
    expect(() => wettingCurveMarks(good, { ...conditions, immersionSpeedMmPerS: 0 })).toThrow(RangeError)
  })
})
