import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { quarterCircleFilletMm3 } from '@/shared/physics/joint-volume'
import { dropOf, meniscusOf, meniscusVolumeMm3, surfaceOf } from '@/shared/physics/solder-meniscus'

const joint = { leadRadiusMm: 0.3, landRadiusMm: 0.95, landAngleMinDeg: 0 }

describe('the fillet of so much solder', () => {
  // Theorem of Pappus: a quarter circle of radius r round a lead of radius a turns to 2π(1 − π/4)r²(a + 0.2234r) (computed).
  test('full wetting and Pappus’s volume give the quarter circle', () => {
    const lead = { shape: 'round', widthMm: 0.6 } as const
    const fillet = meniscusOf({
      ...joint,
      leadAngleDeg: 0,
      volumeMm3: quarterCircleFilletMm3({ landMm: 1.9, lead }),
    })
    expect(fillet.shape).toBe('concave')
    expect(fillet.footRadiusMm).toBeCloseTo(0.95, 3)
    expect(fillet.heightMm).toBeCloseTo(0.65, 3)
    expect(fillet.landAngleDeg).toBeCloseTo(0, 0)
  })
  // Frustum of a cone less the lead: π·h/3·(b² + ab + a²) − π·a²·h (computed by hand: a 0.3, b 0.95, h 0.65).
  test('a cone’s volume at 45° gives the straight side', () => {
    const volumeMm3 = ((Math.PI * 0.65) / 3) * (0.95 ** 2 + 0.95 * 0.3 + 0.3 ** 2) - Math.PI * 0.09 * 0.65
    const fillet = meniscusOf({ ...joint, leadAngleDeg: 45, volumeMm3 })
    expect(fillet.shape).toBe('straight')
    expect(fillet.heightMm).toBeCloseTo(0.65, 6)
    expect(fillet.landAngleDeg).toBeCloseTo(45, 4)
  })
  test('too little draws back from the edge, much more bulges over it', () => {
    const little = meniscusOf({ ...joint, leadAngleDeg: 20, landAngleMinDeg: 20, volumeMm3: 0.1 })
    expect(little.footRadiusMm).toBeLessThan(0.9)
    expect(little.landAngleDeg).toBeCloseTo(20, 6)
    const much = meniscusOf({ ...joint, leadAngleDeg: 70, volumeMm3: 3 })
    expect(much).toMatchObject({ footRadiusMm: 0.95, shape: 'convex' })
    expect(much.landAngleDeg).toBeGreaterThan(90)
  })
  test('a lead that is not wetted is met at more than a right angle', () => {
    const fillet = meniscusOf({ ...joint, leadAngleDeg: 130, volumeMm3: 0.6 })
    expect(fillet.shape).toBe('convex')
    const [first, second] = surfaceOf(fillet, 0.3)
    expect(second!.heightMm).toBeGreaterThan(first!.heightMm)
  })
  test('law: it holds the solder it was given, and begins at the lead and ends at its foot', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 120, noNaN: true }),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        (leadAngleDeg, volumeMm3) => {
          const fillet = meniscusOf({ ...joint, leadAngleDeg, volumeMm3 })
          expect(meniscusVolumeMm3(fillet, 0.3)).toBeCloseTo(volumeMm3, 6)
          const surface = surfaceOf(fillet, 0.3)
          expect(surface[0]!.radiusMm).toBeCloseTo(0.3, 9)
          expect(surface.at(-1)!.radiusMm).toBeCloseTo(fillet.footRadiusMm, 9)
          expect(surface.at(-1)!.heightMm).toBeCloseTo(0, 9)
        },
      ),
      { numRuns: 60 },
    )
  })
  test.each([{ landRadiusMm: 0.2 }, { volumeMm3: 0 }, { leadAngleDeg: 170 }, { leadAngleDeg: Number.NaN }])(
    '%o is no joint',
    (wrong) => {
      expect(() => meniscusOf({ ...joint, leadAngleDeg: 20, volumeMm3: 0.3, ...wrong })).toThrow(RangeError)
    },
  )
})

describe('a drop on a flat', () => {
  // Geometry: half a ball of radius 1 holds 2π/3; a whole ball 4π/3.
  test('at 90° it is half a ball, towards 180° a ball', () => {
    expect(dropOf((2 * Math.PI) / 3, 90)).toMatchObject({ sphereRadiusMm: 1 })
    expect(dropOf((4 * Math.PI) / 3, 179.9).heightMm).toBeCloseTo(2, 3)
  })
  test('a volume or an angle that cannot be is refused', () => {
    expect(() => dropOf(0, 90)).toThrow(RangeError)
    expect(() => dropOf(1, 180)).toThrow(RangeError)
  })
})
