import { Clipper, EndType, FillRule, JoinType, type Paths64 } from 'clipper2-ts'
import { CHORD_ERROR_MM, ringsOf } from './flattened'
import { ringArea, type Box, type Ring, type Solid } from './solid'

/** The library counts in whole steps: a nanometre is far below what any file states. */
const STEPS_PER_MM = 1e6

const pathsOf = (solids: readonly Solid[]): Paths64 =>
  solids.flatMap((solid) =>
    ringsOf(solid).map((ring) => {
      const path = []
      for (let i = 0; i < ring.length; i += 2)
        path.push({ x: Math.round(ring[i]! * STEPS_PER_MM), y: Math.round(ring[i + 1]! * STEPS_PER_MM) })
      return path
    }),
  )

const ringsFrom = (paths: Paths64): Ring[] =>
  paths.map((path) => {
    const ring: number[] = []
    for (const { x, y } of path) ring.push(x / STEPS_PER_MM, y / STEPS_PER_MM)
    return ring
  })

/** What is covered by any of the solids. */
export const unionOf = (solids: readonly Solid[]): readonly Ring[] =>
  ringsFrom(Clipper.union(pathsOf(solids), FillRule.NonZero))

/** The same in a window only: a plane's thousands of corners elsewhere do not matter. */
export function unionWithin(box: Box, solids: readonly Solid[]): readonly Ring[] {
  const [left, top, right, bottom] = [box.minX, box.minY, box.maxX, box.maxY].map((mm) =>
    Math.round(mm * STEPS_PER_MM),
  )
  const inside = Clipper.rectClip({ left: left!, top: top!, right: right!, bottom: bottom! }, pathsOf(solids))
  return ringsFrom(Clipper.union(inside, FillRule.NonZero))
}

/** What is left of some solids once others are taken out; nothing where no ring is left. */
export function without(solids: readonly Solid[], taken: readonly Solid[]): Solid | undefined {
  const rings = ringsFrom(Clipper.difference(pathsOf(solids), pathsOf(taken), FillRule.NonZero))
  return rings.length === 0 ? undefined : { kind: 'polygon', rings }
}

/** The outline of a solid so much farther out, with round corners: the longest ring first. */
export const inflated = (solid: Solid, byMm: number): readonly Ring[] =>
  ringsFrom(
    Clipper.inflatePaths(
      pathsOf([solid]),
      byMm * STEPS_PER_MM,
      JoinType.Round,
      EndType.Polygon,
      2,
      CHORD_ERROR_MM * STEPS_PER_MM,
    ),
  ).toSorted((one, other) => Math.abs(ringArea(other)) - Math.abs(ringArea(one)))
