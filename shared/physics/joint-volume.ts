import type { LeadShape } from './lead-envelope'

export interface JointGeometry {
  readonly landMm: number
  readonly holeMm: number
  readonly boardMm: number
  readonly lead: {
    readonly shape: LeadShape
    readonly widthMm: number
    readonly thicknessMm?: number | undefined
  }
}

/** Section of the lead, mm². */
export function leadSectionMm2({ shape, widthMm, thicknessMm }: JointGeometry['lead']): number {
  if (shape === 'round') return (Math.PI / 4) * widthMm ** 2
  if (shape === 'square') return widthMm ** 2
  return widthMm * (thicknessMm ?? Number.NaN)
}

/** Girth of the lead, mm. */
export function leadGirthMm({ shape, widthMm, thicknessMm }: JointGeometry['lead']): number {
  if (shape === 'round') return Math.PI * widthMm
  if (shape === 'square') return 4 * widthMm
  return 2 * (widthMm + (thicknessMm ?? Number.NaN))
}

/** Solder between lead and wall for a full hole, mm³: (hole section − lead section) · board. */
export function annulusMm3({ holeMm, boardMm, lead }: JointGeometry): number {
  const gapMm2 = (Math.PI / 4) * holeMm ** 2 - leadSectionMm2(lead)
  if (!(gapMm2 > 0)) throw new RangeError('The lead fills the hole: there is no room for solder.')
  if (!(boardMm > 0)) throw new RangeError('A board has a thickness greater than zero.')
  return gapMm2 * boardMm
}

/** 1 − π/4: area that a quarter circle leaves of its square. */
const SPANDREL_AREA = 1 - Math.PI / 4
/** Where the centroid of that area lies from the corner, in radii: (10 − 3π)/(3(4 − π)). */
const SPANDREL_CENTROID = (10 - 3 * Math.PI) / (3 * (4 - Math.PI))

/**
 * One fillet whose profile is a quarter circle from the edge of the land to the
 * lead, mm³, by the theorem of Pappus: 2π · (1 − π/4)r² · (a + 0.2234r), with r
 * the width of the ring and a the radius of the lead (of equal section, when it has corners).
 * Holds while the joint is much smaller than the capillary length of 3.2 mm.
 */
export function quarterCircleFilletMm3({ landMm, lead }: Pick<JointGeometry, 'landMm' | 'lead'>): number {
  const leadRadiusMm = Math.sqrt(leadSectionMm2(lead) / Math.PI)
  const ringMm = landMm / 2 - leadRadiusMm
  if (!(ringMm > 0)) throw new RangeError('The land must be larger than the lead.')
  return 2 * Math.PI * SPANDREL_AREA * ringMm ** 2 * (leadRadiusMm + SPANDREL_CENTROID * ringMm)
}

/** Solder of a whole through-hole joint, mm³: the filled share of the hole and a fillet on each side. */
export function jointSolderMm3(joint: JointGeometry, filledShare = 1, fillets = 2): number {
  return filledShare * annulusMm3(joint) + fillets * quarterCircleFilletMm3(joint)
}
