/** A place in a joint's section: distance from the lead's axis and height above the land, mm. */
export interface SectionPoint {
  readonly radiusMm: number
  readonly heightMm: number
}

/** Where solder meets lead and land, and the arc between: concave, straight or convex. */
export interface Meniscus {
  /** Where the surface meets the land; the land's edge unless there is too little solder to reach it. */
  readonly footRadiusMm: number
  /** Where it meets the lead. */
  readonly heightMm: number
  readonly leadAngleDeg: number
  readonly landAngleDeg: number
  readonly shape: 'concave' | 'straight' | 'convex'
}

interface MeniscusAsked {
  readonly leadRadiusMm: number
  readonly landRadiusMm: number
  /** Between lead and surface, through the solder. */
  readonly leadAngleDeg: number
  /** The least angle at which the solder leaves the land before it draws back from the edge. */
  readonly landAngleMinDeg: number
  readonly volumeMm3: number
}

const STEPS = 96
const HALVINGS = 60
const radians = (degrees: number): number => (degrees * Math.PI) / 180
const degrees = (angle: number): number => (angle * 180) / Math.PI

/**
 * The fillet that so much solder makes round a lead: an arc of a circle that
 * leaves the lead at its contact angle. While there is enough it reaches the
 * land's edge and its angle there grows with the volume; with less it draws
 * back along the land at the least angle. Gravity and the curvature around the
 * lead are left out: good for joints much smaller than 3.2 mm.
 *
 * Units: mm, mm³, degrees. Throws RangeError on sizes that are not positive and
 * angles outside 0° to 160°.
 * Geometry: the tangents at an arc's ends make equal angles with its chord
 * (Euclid III.32); the volume is that of the arc's polygon turned round the axis.
 */
export function meniscusOf(asked: MeniscusAsked): Meniscus {
  requireJoint(asked)
  const { leadRadiusMm, landRadiusMm, leadAngleDeg, landAngleMinDeg, volumeMm3 } = asked
  const pinned = (heightMm: number) => arcTo(leadRadiusMm, landRadiusMm, heightMm, leadAngleDeg)
  const minHeightMm = (landRadiusMm - leadRadiusMm) * steepness(leadAngleDeg, landAngleMinDeg)
  const volumeAt = (meniscus: Meniscus) => meniscusVolumeMm3(meniscus, leadRadiusMm)
  if (volumeMm3 >= volumeAt(pinned(minHeightMm))) {
    const max = greatestHeightMm((height) => volumeAt(pinned(height)), minHeightMm, volumeMm3)
    return pinned(risingRoot((height) => volumeAt(pinned(height)) - volumeMm3, minHeightMm, max))
  }
  const drawnBack = (footMm: number) =>
    arcTo(
      leadRadiusMm,
      footMm,
      (footMm - leadRadiusMm) * steepness(leadAngleDeg, landAngleMinDeg),
      leadAngleDeg,
    )
  return drawnBack(
    risingRoot((foot) => volumeAt(drawnBack(foot)) - volumeMm3, leadRadiusMm * (1 + 1e-9), landRadiusMm),
  )
}

/** The surface in section from lead to foot, in so many equal steps along the arc. */
export function surfaceOf(meniscus: Meniscus, leadRadiusMm: number, steps = STEPS): SectionPoint[] {
  const { footRadiusMm, heightMm, leadAngleDeg } = meniscus
  const reachMm = footRadiusMm - leadRadiusMm
  const bulge = radians(leadAngleDeg) - Math.atan2(reachMm, heightMm)
  const chordMm = Math.hypot(reachMm, heightMm)
  return Array.from({ length: steps + 1 }, (_, step) => {
    const turned = (2 * bulge * step) / steps
    // Chord of the part of the arc so far, and its direction: half of what has been turned.
    const partMm =
      Math.abs(bulge) < 1e-9 ? (chordMm * step) / steps : (chordMm * Math.sin(turned / 2)) / Math.sin(bulge)
    const heading = radians(leadAngleDeg) - turned / 2
    return {
      radiusMm: leadRadiusMm + partMm * Math.sin(heading),
      heightMm: heightMm - partMm * Math.cos(heading),
    }
  })
}

/** Solder between surface, lead and land, mm³: frustums of cones, the lead taken out. */
export function meniscusVolumeMm3(meniscus: Meniscus, leadRadiusMm: number): number {
  const surface = surfaceOf(meniscus, leadRadiusMm)
  let volume = 0
  for (let at = 1; at < surface.length; at++) {
    const [upper, lower] = [surface[at - 1]!, surface[at]!]
    const [r, s] = [upper.radiusMm, lower.radiusMm]
    volume += (Math.PI / 3) * (upper.heightMm - lower.heightMm) * (r * r + r * s + s * s)
  }
  return volume - Math.PI * leadRadiusMm ** 2 * meniscus.heightMm
}

/**
 * The base and the height of a drop of so much solder on a flat surface that it
 * meets at a contact angle: V = π/3 · R³ · (2 + cos θ)(1 − cos θ)².
 *
 * Units: mm³, degrees; mm. Throws RangeError on a volume that is not positive or
 * an angle outside 0° to 180°, both excluded.
 * Geometry: cap of a sphere.
 */
export function dropOf(volumeMm3: number, contactAngleDeg: number) {
  if (!(volumeMm3 > 0)) throw new RangeError('A drop has a volume greater than zero.')
  if (!(contactAngleDeg > 0 && contactAngleDeg < 180))
    throw new RangeError('The contact angle of a drop lies between 0° and 180°.')
  const cosine = Math.cos(radians(contactAngleDeg))
  const sphereRadiusMm = Math.cbrt((3 * volumeMm3) / (Math.PI * (2 + cosine) * (1 - cosine) ** 2))
  return {
    sphereRadiusMm,
    baseRadiusMm: sphereRadiusMm * Math.sin(radians(contactAngleDeg)),
    heightMm: sphereRadiusMm * (1 - cosine),
  }
}

/** Height over reach of the arc with these angles at lead and land; none where the lead is not wetted. */
function steepness(leadDeg: number, landDeg: number): number {
  const chordFromUpright = (90 + leadDeg - landDeg) / 2
  return chordFromUpright >= 90 ? 0 : 1 / Math.tan(radians(chordFromUpright))
}

function arcTo(leadRadiusMm: number, footRadiusMm: number, heightMm: number, leadAngleDeg: number): Meniscus {
  const chordDeg = degrees(Math.atan2(footRadiusMm - leadRadiusMm, heightMm))
  const bulgeDeg = leadAngleDeg - chordDeg
  return {
    footRadiusMm,
    heightMm,
    leadAngleDeg,
    landAngleDeg: 90 + leadAngleDeg - 2 * chordDeg,
    shape: Math.abs(bulgeDeg) < 0.5 ? 'straight' : bulgeDeg < 0 ? 'concave' : 'convex',
  }
}

function greatestHeightMm(volumeAt: (heightMm: number) => number, fromMm: number, volumeMm3: number): number {
  let height = Math.max(fromMm, 0.01)
  while (volumeAt(height) < volumeMm3) {
    height *= 2
    if (height > 1000) throw new RangeError('So much solder does not stay on the land.')
  }
  return height
}

function risingRoot(value: (at: number) => number, from: number, to: number): number {
  let [low, high] = [from, to]
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2
    if (value(middle) < 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

function requireJoint(asked: MeniscusAsked): void {
  const { leadRadiusMm, landRadiusMm, leadAngleDeg, landAngleMinDeg, volumeMm3 } = asked
  if (!(leadRadiusMm > 0) || !(landRadiusMm > leadRadiusMm))
    throw new RangeError('The land must be larger than the lead, and the lead larger than nothing.')
  if (!(volumeMm3 > 0)) throw new RangeError('A fillet has a volume greater than zero.')
  for (const angle of [leadAngleDeg, landAngleMinDeg])
    if (!(angle >= 0 && angle <= 160)) throw new RangeError('A contact angle lies between 0° and 160°.')
}
