import type { Point, Ring, Solid } from './solid'

/** How far a chord may lie inside its arc, mm. */
export const CHORD_ERROR_MM = 0.001
/** A circle of two kilometres has so many chords: one that is larger stands in no file in earnest. */
const CHORDS_MAX = 100_000

/** How many chords keep within the error over an angle, in radians. */
function chordsFor(radius: number, angle: number): number {
  const step = 2 * Math.acos(Math.max(0, 1 - CHORD_ERROR_MM / Math.max(radius, CHORD_ERROR_MM)))
  return Math.min(CHORDS_MAX, Math.max(1, Math.ceil(Math.abs(angle) / step)))
}

/**
 * Points after `from` along an arc round a centre up to `to`, which is the last
 * of them exactly. Lengths in mm, `sweep` in radians, positive to the left.
 */
export function arcPoints(from: Point, to: Point, centre: Point, sweep: number): Point[] {
  const [startX, startY] = [from[0] - centre[0], from[1] - centre[1]]
  const startRadius = Math.hypot(startX, startY)
  const endRadius = Math.hypot(to[0] - centre[0], to[1] - centre[1])
  const start = Math.atan2(startY, startX)
  const chords = chordsFor(Math.max(startRadius, endRadius), sweep)
  const points: Point[] = []
  for (let i = 1; i < chords; i++) {
    const part = i / chords
    const radius = startRadius + (endRadius - startRadius) * part
    const angle = start + sweep * part
    points.push([centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)])
  }
  points.push(to)
  return points
}

/** A circle as a ring turning to the left, its chords inside by no more than the error. */
export function circleRing(x: number, y: number, radius: number): Ring {
  const chords = Math.max(8, chordsFor(radius, 2 * Math.PI))
  const ring: number[] = []
  for (let i = 0; i < chords; i++) {
    const angle = (2 * Math.PI * i) / chords
    ring.push(x + radius * Math.cos(angle), y + radius * Math.sin(angle))
  }
  return ring
}

/** The outline of any solid as rings; of a capsule with its ends as chords. */
export function ringsOf(solid: Solid): readonly Ring[] {
  if (solid.kind === 'polygon') return solid.rings
  const { a, b, radius } = solid
  const length = Math.hypot(b[0] - a[0], b[1] - a[1])
  if (length === 0) return [circleRing(a[0], a[1], radius)]
  const [nx, ny] = [(-(b[1] - a[1]) / length) * radius, ((b[0] - a[0]) / length) * radius]
  const ring: Point[] = [[b[0] - nx, b[1] - ny]]
  ring.push(...arcPoints([b[0] - nx, b[1] - ny], [b[0] + nx, b[1] + ny], b, Math.PI))
  ring.push([a[0] + nx, a[1] + ny])
  ring.push(...arcPoints([a[0] + nx, a[1] + ny], [a[0] - nx, a[1] - ny], a, Math.PI))
  return [ring.flat()]
}
