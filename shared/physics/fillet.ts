import { MOLTEN_SOLDER } from '@/shared/materials/fillet-data'

const radians = (degrees: number): number => (degrees * Math.PI) / 180

/** What the meniscus between lead and land looks like in section. */
export type FilletShape = 'concave' | 'straight' | 'convex'

export interface Fillet {
  /** From the lead to the edge of the land, mm. */
  readonly widthMm: number
  /** Up the lead, mm. */
  readonly heightMm: number
  readonly shape: FilletShape
}

/**
 * The fillet between a land edge and a lead, a circular arc that meets both at
 * their contact angles: height = width · (cos θ_land − sin θ_lead)/(cos θ_lead − sin θ_land).
 * Concave below a sum of 90°, straight at 90°, convex above. Holds for joints
 * much smaller than 3.2 mm.
 *
 * Units: mm, degrees. Throws RangeError outside 0° to 90° (90° excluded) or
 * when the land does not stand out beyond the lead.
 * Source: geometry of a circle through two lines at given angles.
 */
export function filletOf(
  { landMm, leadMm }: { readonly landMm: number; readonly leadMm: number },
  { leadDeg, landDeg }: { readonly leadDeg: number; readonly landDeg: number },
): Fillet {
  const widthMm = (landMm - leadMm) / 2
  if (!(widthMm > 0)) throw new RangeError('The land must be larger than the lead.')
  for (const angle of [leadDeg, landDeg]) {
    if (!(angle >= 0 && angle < 90))
      throw new RangeError('A contact angle lies between 0° and 90°, 90° excluded.')
  }
  const sum = leadDeg + landDeg
  const shape = sum < 90 ? 'concave' : sum === 90 ? 'straight' : 'convex'
  const numerator = Math.cos(radians(landDeg)) - Math.sin(radians(leadDeg))
  const denominator = Math.cos(radians(leadDeg)) - Math.sin(radians(landDeg))
  // A straight profile has no circle: both differences vanish, and the limit is the chord at that angle.
  const ratio = shape === 'straight' ? Math.tan(radians(landDeg)) : numerator / denominator
  return { widthMm, heightMm: widthMm * ratio, shape }
}

/**
 * How far solder could rise at rest in the gap round a lead, mm: 2γ·cos θ/(ρ·g·gap).
 * Far above any board in practice: fill is lost to freezing, gas or non-wetting.
 * Throws RangeError on a gap that is not positive.
 */
export function capillaryRiseMm(gapMm: number, contactDeg: number): number {
  if (!(gapMm > 0)) throw new RangeError('There is no gap for solder to rise in.')
  const { surfaceTensionNm, densityKgM3, gravityMs2 } = MOLTEN_SOLDER
  const pressure = (2 * surfaceTensionNm * Math.cos(radians(contactDeg))) / (gapMm * 1e-3)
  return (pressure / (densityKgM3 * gravityMs2)) * 1e3
}
