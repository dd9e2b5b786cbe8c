import type { Readings } from '@/shared/records/readings'
import {
  buoyancyMN,
  contactAngleDeg,
  requireSpecimen,
  theoreticalForceMN,
} from '@/shared/physics/wetting-force'
import type { ImmersedSpecimen } from '@/shared/physics/wetting-force'

/** How one force–time curve was taken. */
export interface CurveConditions extends ImmersedSpecimen {
  readonly forceSign: 'down-positive' | 'up-positive'
  /** Until the specimen is down, forces belong to the movement and carry no marks. */
  readonly immersionSpeedMmPerS: number
  /** Contact with the solder on the curve's own clock; 0 when left out. */
  readonly contactAtS?: number
}

/** One force–time sample, the clock at zero on contact and the force positive downwards. */
export interface CurvePoint {
  readonly timeS: number
  readonly forceMN: number
}

/**
 * The marks of one curve. A time is undefined when the curve never gets there,
 * a force when the curve ends before that instant.
 */
export interface WettingCurveMarks {
  readonly specimen: string
  readonly points: readonly CurvePoint[]
  /** −ρ·g·V: where the curve lies at 90°. */
  readonly buoyancyLineMN: number
  readonly theoreticalMN: number
  /** Crosses the buoyancy line upwards: the contact angle passes 90°. */
  readonly buoyancyCrossS: number | undefined
  /** Crosses the true zero line upwards: wetting carries the displaced solder. */
  readonly zeroCrossS: number | undefined
  readonly forceAt2sMN: number | undefined
  readonly forceAt5sMN: number | undefined
  readonly peakMN: number
  readonly peakAtS: number
  /** First reaches two thirds of the theoretical force. */
  readonly twoThirdsOfTheoreticalS: number | undefined
  /** First reaches two thirds of its own peak. */
  readonly twoThirdsOfPeakS: number | undefined
  readonly angleAt2sDeg: number | undefined
  readonly angleAtPeakDeg: number | undefined
  /** The last point that was recorded. */
  readonly endMN: number
  readonly endAtS: number
  /** From here on the specimen is down, and forces belong to wetting. */
  readonly downAtS: number
  /**
   * Fall from the peak to the last point, as a share of the peak above the
   * buoyancy line. A curve that never rises above it has none.
   */
  readonly dewettingDropPct: number | undefined
  /** Area between curve and buoyancy line up to 5 s, mN·s; below the line counts negative. */
  readonly areaTo5sMNs: number
}

/**
 * The marks of every curve in a set of readings (columns specimen, timeS,
 * forceMN), one for each specimen in the order they appear.
 * Crossings are found by straight lines between neighbouring samples.
 * Throws RangeError on conditions no specimen can have.
 * Source: wetting-balance curve as IEC 60068-2-69 and J-STD-002 name its points (from memory).
 */
export function wettingCurveMarks(readings: Readings, conditions: CurveConditions): WettingCurveMarks[] {
  requireSpecimen(conditions)
  if (!(conditions.immersionSpeedMmPerS > 0)) {
    throw new RangeError('The immersion speed of a wetting-balance specimen must be greater than zero.')
  }
  return [...curvesOf(readings, conditions)].map(([specimen, points]) =>
    marksOf(specimen, points, conditions),
  )
}

/** The first instant that any criteria ask a force of, s after contact. */
const FIRST_ASKED_S = 2

/**
 * The curve ends before it tells of wetting: the specimen is not down yet, or the first force that criteria ask is not reached.
 * Source: J-STD-002, suggested criteria, force at 2 s (from memory).
 */
export const endsTooSoon = ({ endAtS, downAtS }: WettingCurveMarks): boolean =>
  endAtS < Math.max(downAtS, FIRST_ASKED_S)

/**
 * The curve ends below its buoyancy line: the contact angle is over 90°, solder still shuns the surface.
 * Source: force balance of the immersed specimen, F = γ·P·cos θ − ρ·g·V; at θ = 90° only buoyancy is left.
 */
export const endsUnwetted = (marks: WettingCurveMarks): boolean =>
  !endsTooSoon(marks) && marks.endMN < marks.buoyancyLineMN

/** Points by specimen, in time order, from the moment of contact on. */
function curvesOf(readings: Readings, { forceSign, contactAtS = 0 }: CurveConditions) {
  const specimens = readings.columns['specimen'] ?? []
  const times = readings.columns['timeS'] ?? []
  const forces = readings.columns['forceMN'] ?? []
  const sign = forceSign === 'down-positive' ? 1 : -1
  const curves = new Map<string, CurvePoint[]>()
  for (let row = 0; row < readings.count; row++) {
    const time = times[row]
    const force = forces[row]
    if (typeof time !== 'number' || typeof force !== 'number') continue
    if (!(time >= contactAtS)) continue
    const name = String(specimens[row] ?? '')
    const points = curves.get(name) ?? []
    if (points.length === 0) curves.set(name, points)
    points.push({ timeS: time - contactAtS, forceMN: force * sign })
  }
  for (const points of curves.values()) {
    if (!isAscending(points)) points.sort((a, b) => a.timeS - b.timeS)
  }
  return curves
}

function marksOf(
  specimen: string,
  points: readonly CurvePoint[],
  conditions: CurveConditions,
): WettingCurveMarks {
  const buoyancyLineMN = -buoyancyMN(conditions)
  const theoreticalMN = theoreticalForceMN(conditions)
  const immersed = afterImmersion(points, conditions)
  const peak = immersed.reduce((best, point) => (point.forceMN > best.forceMN ? point : best))
  const last = immersed[immersed.length - 1] ?? peak
  const forceAt2sMN = forceAt(points, 2)
  const peakAboveLineMN = peak.forceMN - buoyancyLineMN
  return {
    specimen,
    points,
    buoyancyLineMN,
    theoreticalMN,
    buoyancyCrossS: risesThrough(immersed, buoyancyLineMN),
    zeroCrossS: risesThrough(immersed, 0),
    forceAt2sMN,
    forceAt5sMN: forceAt(points, 5),
    peakMN: peak.forceMN,
    peakAtS: peak.timeS,
    twoThirdsOfTheoreticalS: theoreticalMN > 0 ? risesThrough(immersed, (2 / 3) * theoreticalMN) : undefined,
    twoThirdsOfPeakS: peak.forceMN > 0 ? risesThrough(immersed, (2 / 3) * peak.forceMN) : undefined,
    angleAt2sDeg: forceAt2sMN === undefined ? undefined : contactAngleDeg(forceAt2sMN, conditions),
    angleAtPeakDeg: contactAngleDeg(peak.forceMN, conditions),
    endMN: last.forceMN,
    endAtS: last.timeS,
    downAtS: conditions.depthMm / conditions.immersionSpeedMmPerS,
    dewettingDropPct:
      peakAboveLineMN > 0 ? (100 * (peak.forceMN - last.forceMN)) / peakAboveLineMN : undefined,
    areaTo5sMNs: areaAbove(points, buoyancyLineMN, 5),
  }
}

/** What lies after the specimen has reached its depth; the whole curve when it ends before. */
function afterImmersion(
  points: readonly CurvePoint[],
  { depthMm, immersionSpeedMmPerS }: CurveConditions,
): readonly CurvePoint[] {
  const down = points.findIndex((point) => point.timeS >= depthMm / immersionSpeedMmPerS)
  return down > 0 ? points.slice(down) : points
}

/** When the curve first rises through a level; its start when it was never below; undefined when it stays below. */
function risesThrough(points: readonly CurvePoint[], levelMN: number): number | undefined {
  let below = false
  for (let i = 0; i < points.length; i++) {
    const point = points[i]!
    if (point.forceMN < levelMN) {
      below = true
      continue
    }
    if (below) return crossing(points[i - 1]!, point, levelMN)
  }
  return below ? undefined : points[0]?.timeS
}

/** The instant at which the straight line between two samples meets a level. */
function crossing(before: CurvePoint, after: CurvePoint, levelMN: number): number {
  const rise = after.forceMN - before.forceMN
  if (!(rise > 0)) return after.timeS
  return before.timeS + ((levelMN - before.forceMN) / rise) * (after.timeS - before.timeS)
}

/** The force at an instant by the straight line between its neighbours; undefined outside the curve. */
function forceAt(points: readonly CurvePoint[], timeS: number): number | undefined {
  const after = points.findIndex((point) => point.timeS >= timeS)
  const right = points[after]
  if (right === undefined) return undefined
  if (right.timeS === timeS) return right.forceMN
  const left = points[after - 1]
  if (left === undefined) return undefined
  const share = (timeS - left.timeS) / (right.timeS - left.timeS)
  return left.forceMN + share * (right.forceMN - left.forceMN)
}

/** Trapezoids between curve and level up to an instant. */
function areaAbove(points: readonly CurvePoint[], levelMN: number, untilS: number): number {
  let area = 0
  for (let i = 1; i < points.length; i++) {
    const left = points[i - 1]!
    const right = points[i]!
    if (left.timeS >= untilS) break
    const end = Math.min(right.timeS, untilS)
    const span = right.timeS - left.timeS
    const share = span > 0 ? (end - left.timeS) / span : 0
    const endForce = left.forceMN + share * (right.forceMN - left.forceMN)
    area += ((left.forceMN + endForce) / 2 - levelMN) * (end - left.timeS)
  }
  return area
}

function isAscending(points: readonly CurvePoint[]): boolean {
  for (let i = 1; i < points.length; i++) {
    if (points[i]!.timeS < points[i - 1]!.timeS) return false
  }
  return true
}
