import { filletOf, type Fillet } from '@/shared/physics/fillet'
import { filletVolumeMm3 } from '@/shared/physics/fillet-volume'
import type { FinishedHole } from '@/shared/physics/finished-hole'
import { annulusMm3, leadSectionMm2 } from '@/shared/physics/joint-volume'
import type { LeadHole } from '@/shared/plan/parameters/lead-holes'
import { holeOf } from './joint-row'

/** Between good and fair wetting: what is designed for while nothing else is specified. */
export const DEFAULT_ANGLE_DEG = 30

export interface JointTerms {
  readonly boardMm: number
  readonly barrelUm: number
  /** Contact angle on lead and land alike. */
  readonly angleDeg: number
}

/** One kind of joint as it should come out of the solder. */
export interface JointShape {
  readonly hole: FinishedHole
  /** Diameter of a round lead of the same section. */
  readonly leadMm: number
  readonly fillet: Fillet
  /** A plated hole has a fillet on either side, an unplated one on the solder side only. */
  readonly fillets: 1 | 2
  /** Solder in a full barrel; nothing holds it in an unplated hole. */
  readonly barrelMm3: number
  readonly filletMm3: number
  readonly solderMm3: number
}

/**
 * The joint of a row of the hole table, at its nominal sizes: a lead with
 * corners is counted as a round one of equal section.
 * Throws RangeError when the row contradicts itself.
 */
export function jointShapeOf(row: LeadHole, { boardMm, barrelUm, angleDeg }: JointTerms): JointShape {
  const lead = { shape: row.leadShape, widthMm: row.leadMm, thicknessMm: row.leadThicknessMm }
  const leadMm = 2 * Math.sqrt(leadSectionMm2(lead) / Math.PI)
  const hole = holeOf(row, barrelUm)
  const angles = { leadDeg: angleDeg, landDeg: angleDeg }
  const sizes = { landMm: row.landMm, leadMm }
  const inHole = annulusMm3({ landMm: row.landMm, holeMm: hole.nominalMm, boardMm, lead })
  const barrelMm3 = row.plated ? inHole : 0
  const filletMm3 = filletVolumeMm3(sizes, angles)
  const fillets = row.plated ? 2 : 1
  return {
    hole,
    leadMm,
    fillet: filletOf(sizes, angles),
    fillets,
    barrelMm3,
    filletMm3,
    solderMm3: barrelMm3 + fillets * filletMm3,
  }
}
