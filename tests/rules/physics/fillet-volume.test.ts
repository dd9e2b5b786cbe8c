import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { filletOf } from '@/shared/physics/fillet'
import { filletVolumeMm3 } from '@/shared/physics/fillet-volume'
import { quarterCircleFilletMm3 } from '@/shared/physics/joint-volume'

const joint = { landMm: 1.9, leadMm: 0.8 }

/**
 * The same body added up in thin rings round the lead, from the equation of the
 * circle through the two ends of the profile: an independent way to the volume.
 */
function byRings({ landMm, leadMm }: typeof joint, leadDeg: number, landDeg: number): number {
  const { widthMm: w, heightMm: h, shape } = filletOf({ landMm, leadMm }, { leadDeg, landDeg })
  // Centre of the circle that leaves the lead at the contact angle: the tangent there is (sin θ, −cos θ).
  const radians = (leadDeg * Math.PI) / 180
  const across = Math.cos(radians)
  const up = Math.sin(radians)
  const radius = (w ** 2 + h ** 2) / (2 * Math.abs(w * across - h * up))
  const side = shape === 'concave' ? 1 : -1
  const [centreX, centreZ] = [side * radius * across, h + side * radius * up]
  const heightAt = (x: number): number =>
    shape === 'straight'
      ? h * (1 - x / w)
      : centreZ - side * Math.sqrt(Math.max(0, radius ** 2 - (x - centreX) ** 2))
  const rings = 20_000
  let sum = 0
  for (let ring = 0; ring < rings; ring++) {
    const x = ((ring + 0.5) / rings) * w
    sum += 2 * Math.PI * (leadMm / 2 + x) * heightAt(x) * (w / rings)
  }
  return sum
}

describe('the solder of a fillet', () => {
  // Pappus: 2π · (1 − π/4) · r² · (a + 0.2234 · r), the pin-in-paste volume calculation of the trade.
  test('at 0° on both it is the quarter circle turned round the lead', () => {
    const quarter = quarterCircleFilletMm3({ landMm: 1.9, lead: { shape: 'round', widthMm: 0.8 } })
    expect(filletVolumeMm3(joint, { leadDeg: 0, landDeg: 0 })).toBeCloseTo(quarter, 12)
    expect(quarter).toBeCloseTo(0.2133, 4)
  })
  // A cone frustum less the lead in it: π·h/3 · (R² + R·a + a²) − π·a²·h.
  test('straight at 45° on both it is a cone frustum round the lead', () => {
    const [land, lead, height] = [0.95, 0.4, 0.55]
    const frustum = ((Math.PI * height) / 3) * (land ** 2 + land * lead + lead ** 2)
    expect(filletVolumeMm3(joint, { leadDeg: 45, landDeg: 45 })).toBeCloseTo(
      frustum - Math.PI * lead ** 2 * height,
      9,
    )
  })
  test.each([
    [25, 25],
    [30, 30],
    [10, 40],
    [0, 30],
    [50, 20],
    [55, 45],
    [60, 60],
  ])('at %s° on the lead and %s° on the land it is what thin rings add up to', (leadDeg, landDeg) => {
    const rings = byRings(joint, leadDeg, landDeg)
    expect(filletVolumeMm3(joint, { leadDeg, landDeg }) / rings).toBeCloseTo(1, 4)
  })
  test('a poorer wetting never holds less solder on the same land', () => {
    const angle = fc.double({ min: 0, max: 88, noNaN: true })
    fc.assert(
      fc.property(angle, angle, (one, other) => {
        const [better, worse] = [Math.min(one, other), Math.max(one, other)]
        const held = (deg: number): number => filletVolumeMm3(joint, { leadDeg: deg, landDeg: deg })
        expect(held(worse)).toBeGreaterThanOrEqual(held(better) - 1e-9)
      }),
    )
  })
  test('a land no larger than its lead is refused', () => {
    expect(() => filletVolumeMm3({ landMm: 0.8, leadMm: 0.8 }, { leadDeg: 30, landDeg: 30 })).toThrow(
      RangeError,
    )
  })
})
