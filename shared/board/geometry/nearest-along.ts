import type { Edge } from './distance'
import type { Point } from './solid'

/**
 * Where along a line another comes nearest to it, as a share of its length from
 * `a`, 0 to 1: where they cross, else at the end of one of them.
 */
export function nearestAlong(line: Edge, other: Edge): number {
  const crossing = crossingShare(line, other)
  if (crossing !== undefined) return crossing
  const candidates = [shareOf(line, other.a), shareOf(line, other.b), 0, 1]
  const away = (share: number): number => fromSegment(pointAt(line, share), other)
  return candidates.reduce((least, share) => (away(share) < away(least) ? share : least))
}

const pointAt = ({ a, b }: Edge, share: number): Point => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
]

/** The share at which a line is nearest to a point. */
function shareOf({ a, b }: Edge, [x, y]: Point): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const squared = dx * dx + dy * dy
  return squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / squared))
}

function fromSegment(point: Point, line: Edge): number {
  const [x, y] = pointAt(line, shareOf(line, point))
  return Math.hypot(point[0] - x, point[1] - y)
}

/** Two lines that lie along each other cross nowhere or everywhere: neither is told. */
function crossingShare({ a, b }: Edge, { a: c, b: d }: Edge): number | undefined {
  const [rx, ry, sx, sy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]]
  const across = rx * sy - ry * sx
  if (Math.abs(across) < 1e-12) return undefined
  const mine = ((c[0] - a[0]) * sy - (c[1] - a[1]) * sx) / across
  const theirs = ((c[0] - a[0]) * ry - (c[1] - a[1]) * rx) / across
  return mine >= 0 && mine <= 1 && theirs >= 0 && theirs <= 1 ? mine : undefined
}
