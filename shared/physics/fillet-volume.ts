import { filletOf } from './fillet'

const degrees = (radians: number): number => (radians * 180) / Math.PI

/** Below this the arc is its chord: radii beyond a million chords only carry rounding. */
const STRAIGHT_RAD = 1e-6

interface Arc {
  /** Between the chord and the arc's tangent at its end; half the arc's angle at the centre. */
  readonly bulgeRad: number
  readonly segmentMm2: number
  /** From the chord to the centroid of the segment, mm. */
  readonly offMm: number
}

/** The circular segment between a chord and its arc. */
function segmentOn(chordMm: number, bulgeRad: number): Arc {
  if (bulgeRad < STRAIGHT_RAD) return { bulgeRad, segmentMm2: 0, offMm: 0 }
  const radiusMm = chordMm / (2 * Math.sin(bulgeRad))
  const turn = 2 * bulgeRad - Math.sin(2 * bulgeRad)
  return {
    bulgeRad,
    segmentMm2: (radiusMm ** 2 / 2) * turn,
    offMm: (4 * radiusMm * Math.sin(bulgeRad) ** 3) / (3 * turn) - radiusMm * Math.cos(bulgeRad),
  }
}

/**
 * The solder of one fillet round a lead whose profile is a circular arc that
 * meets lead and land at their contact angles, mm³: the triangle between lead,
 * land and chord, less the segment that a concave arc cuts off it (or with the
 * one that a convex arc adds), each turned round the axis of the lead.
 *
 * Units: mm, degrees. Throws RangeError where `filletOf` does.
 * Source: second theorem of Pappus and Guldin; centroid of a circular segment.
 * Holds while the joint is much smaller than the capillary length of 3.2 mm.
 */
export function filletVolumeMm3(
  { landMm, leadMm }: { readonly landMm: number; readonly leadMm: number },
  { leadDeg, landDeg }: { readonly leadDeg: number; readonly landDeg: number },
): number {
  const { widthMm, heightMm } = filletOf({ landMm, leadMm }, { leadDeg, landDeg })
  const chordMm = Math.hypot(widthMm, heightMm)
  const excessDeg = leadDeg - degrees(Math.atan2(widthMm, heightMm))
  const { segmentMm2, offMm } = segmentOn(chordMm, (Math.abs(excessDeg) * Math.PI) / 180)
  const outward = excessDeg < 0 ? -1 : 1
  const triangle = ((widthMm * heightMm) / 2) * (leadMm / 2 + widthMm / 3)
  const segment = segmentMm2 * (leadMm / 2 + widthMm / 2 + (outward * heightMm * offMm) / chordMm)
  return 2 * Math.PI * (triangle + outward * segment)
}
