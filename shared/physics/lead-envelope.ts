/** Cross-section of a lead where it passes the hole. */
export const LEAD_SHAPES = ['round', 'square', 'rectangular', 'flat'] as const
export type LeadShape = (typeof LEAD_SHAPES)[number]

export interface Lead {
  readonly shape: LeadShape
  /** Diameter, side, or the wider side. */
  readonly widthMm: number
  /** The narrower side of a rectangular or flat lead; not used for round and square leads. */
  readonly thicknessMm?: number | undefined
  /** ± on each side or on the diameter. */
  readonly toleranceMm: number
}

/** The circle a lead needs: its diameter, or its diagonal when it has corners. */
export interface LeadEnvelope {
  readonly minMm: number
  readonly nominalMm: number
  readonly maxMm: number
  /** How far the envelope moves for one unit of the sides' tolerance when the sides vary independently. */
  readonly rootSumSquareMm: number
}

/**
 * The circle that a lead fills in its hole. A square lead is as large as its
 * diagonal, a rectangular or flat one as the hypotenuse of its sides; the
 * least and the most are taken from the sides at their limits, each apart.
 * Rounded corners are not counted, so that entry is judged on the safe side.
 *
 * Units: mm. Throws RangeError on a side that is not positive or a tolerance
 * that does not leave the side positive.
 * Source: IPC-2222B, hole rule applied to the diagonal of the lead.
 */
export function leadEnvelope(lead: Lead): LeadEnvelope {
  const { widthMm, toleranceMm } = lead
  requireSide(widthMm, toleranceMm)
  switch (lead.shape) {
    case 'round':
      return envelope((offset) => widthMm + offset, toleranceMm, toleranceMm)
    case 'square':
      return envelope(
        (offset) => Math.SQRT2 * (widthMm + offset),
        toleranceMm,
        Math.SQRT2 * toleranceMm, // one die makes both sides: they vary together
      )
    case 'rectangular':
    case 'flat': {
      const thicknessMm = lead.thicknessMm ?? Number.NaN
      requireSide(thicknessMm, toleranceMm)
      // d(hypot)/dw = w/hypot and d(hypot)/dt = t/hypot, so equal tolerances add to exactly one tolerance.
      return envelope(
        (offset) => Math.hypot(widthMm + offset, thicknessMm + offset),
        toleranceMm,
        toleranceMm,
      )
    }
  }
}

const envelope = (
  at: (offsetMm: number) => number,
  toleranceMm: number,
  rootSumSquareMm: number,
): LeadEnvelope => ({
  minMm: at(-toleranceMm),
  nominalMm: at(0),
  maxMm: at(toleranceMm),
  rootSumSquareMm,
})

function requireSide(sideMm: number, toleranceMm: number): void {
  if (!(sideMm > 0)) throw new RangeError('Every side of a lead must be greater than zero.')
  if (!(toleranceMm >= 0 && toleranceMm < sideMm)) {
    throw new RangeError('The tolerance of a lead must be smaller than its side, and not negative.')
  }
}
