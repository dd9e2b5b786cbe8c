import { describe, expect, test } from 'vitest'
import { filletProfile } from '@/app/drawing/fillet-profile'

/** A corner of equal legs of 1 mm: the chord lies at 45°. */
const corner = (contactAngleDeg: number) =>
  filletProfile({ padRadiusMm: 1.5, leadRadiusMm: 0.5, heightMm: 1, contactAngleDeg })

// Elementary geometry: in an equal-legged right corner an arc tangent to both legs is a quarter circle of the legs'
// length; at 45° it degenerates to the chord; at 90° it is the outer quarter circle.
describe('the arc of a fillet in an equal-legged corner', () => {
  test('at 0° is the concave quarter circle, tangent to the land too', () => {
    expect(corner(0)).toMatchObject({ shape: 'concave', large: false })
    expect(corner(0).radiusMm).toBeCloseTo(1, 9)
    expect(corner(0).landAngleDeg).toBeCloseTo(0, 9)
  })
  test('at 45° is straight', () => {
    expect(corner(45)).toMatchObject({ shape: 'straight', radiusMm: Infinity })
  })
  test('at 90° is the convex quarter circle', () => {
    expect(corner(90).shape).toBe('convex')
    expect(corner(90).radiusMm).toBeCloseTo(1, 9)
  })
  test('meets the land at the angle at which it meets the lead', () => {
    for (const angle of [5, 30, 60, 110]) expect(corner(angle).landAngleDeg).toBeCloseTo(angle, 9)
  })
  test('is more than half a circle once the tangent turns back from the chord', () => {
    expect(corner(134).large).toBe(false)
    expect(corner(136).large).toBe(true)
  })
})

describe('impossible joints are refused', () => {
  const joint = { padRadiusMm: 1, leadRadiusMm: 0.35, heightMm: 0.6, contactAngleDeg: 20 }
  test.each([
    ['a land no wider than the lead', { padRadiusMm: 0.35 }],
    ['no lead', { leadRadiusMm: 0 }],
    ['no height', { heightMm: 0 }],
    ['an angle beyond 180°', { contactAngleDeg: 181 }],
    ['an angle that is not a number', { contactAngleDeg: Number.NaN }],
  ])('%s', (_, wrong) => {
    expect(() => filletProfile({ ...joint, ...wrong })).toThrow(RangeError)
  })
})
