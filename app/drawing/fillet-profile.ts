type FilletDimensions = {
  padRadiusMm: number
  leadRadiusMm: number
  /** Height at which the solder meets the lead, above the land. */
  heightMm: number
  /** Between lead and solder surface, measured through the solder. */
  contactAngleDeg: number
}

/** The solder's outline between lead and land edge: an arc of a circle, or a straight line of infinite radius. */
export type FilletProfile = {
  radiusMm: number
  shape: 'concave' | 'straight' | 'convex'
  /** More than half a circle. */
  large: boolean
  /** The contact angle that the same arc makes with the land. */
  landAngleDeg: number
}

const degrees = (radians: number): number => (radians * 180) / Math.PI

/**
 * The circular arc from a lead to the edge of its land that leaves the lead at
 * a given contact angle. Gravity and the curvature around the lead are left
 * out, so it is a picture, not a calculation of volume.
 * Geometry: the angle between a chord and the tangent at its end is half the
 * arc it cuts off (Euclid III.32).
 */
export function filletProfile(dimensions: FilletDimensions): FilletProfile {
  const { padRadiusMm, leadRadiusMm, heightMm, contactAngleDeg } = dimensions
  const reachMm = padRadiusMm - leadRadiusMm
  if (!(reachMm > 0) || !(leadRadiusMm > 0)) throw new RangeError('The land must be wider than the lead.')
  if (!(heightMm > 0)) throw new RangeError('The fillet needs a height greater than zero.')
  if (!(contactAngleDeg >= 0 && contactAngleDeg <= 180)) {
    throw new RangeError('A contact angle lies between 0° and 180°.')
  }
  const chordAngleDeg = degrees(Math.atan2(reachMm, heightMm))
  const bulgeDeg = contactAngleDeg - chordAngleDeg
  const straight = Math.abs(bulgeDeg) < 0.01
  const chordMm = Math.hypot(reachMm, heightMm)
  return {
    radiusMm: straight ? Infinity : chordMm / (2 * Math.sin((Math.abs(bulgeDeg) * Math.PI) / 180)),
    shape: straight ? 'straight' : bulgeDeg < 0 ? 'concave' : 'convex',
    large: Math.abs(bulgeDeg) > 90,
    landAngleDeg: 90 - (2 * chordAngleDeg - contactAngleDeg),
  }
}
