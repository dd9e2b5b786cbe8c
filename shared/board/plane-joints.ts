import { inflated } from './geometry/boolean'
import { groupedBy } from '@/shared/grouped-by'
import { ROUNDED_MM } from './gaps'
import { coveredAlong, lengthAlong, placeOn, type PolygonNear, type Stretch } from './geometry/along-path'
import { winding, type Edge } from './geometry/distance'
import { ringsOf } from './geometry/flattened'
import { areaOf, boxOf, boxOfPoints, type Point, type Solid } from './geometry/solid'
import { isCentred, LAND_MAX_MM } from './lands'
import { middleOf, type FoundHole, type JoinedCopper, type PlacedLand } from './joined-copper'

/** How the land of a hole for a lead is joined to large copper of its layer. Lengths in mm. */
export interface PlaneJoint {
  /** The hole's number among those of the board. */
  readonly hole: number
  readonly layer: string
  readonly at: Point
  /** Across the land where it is joined. */
  readonly landMm: number
  /** Widths of the webs that join it; none where the plane surrounds it whole. */
  readonly websMm: readonly number[]
  /** All of them together; the way round where the plane surrounds it whole. */
  readonly joinedMm: number
  /** Of the way round the land, what is joined: 1 where the plane surrounds it whole. */
  readonly share: number
}

/**
 * Copper of one piece on one layer from this area on is large: a disc of an inch across, of which common practice
 * (no published source) has it that soldering heat is drawn off. What is drawn twice counts twice.
 */
const LARGE_MM2 = (Math.PI / 4) * 25.4 ** 2

/** How far outside a land its webs are looked for, mm, in steps: where least of it is joined, there its relief is. */
const OUT_TO_MM = 0.8
const OUT_STEP_MM = 0.1
/** So much of the way round is all of it. */
const ALL = 0.999

/** Every plated hole for a lead that stands in large copper of a layer, layer by layer. */
export function planeJoints(joined: JoinedCopper, isForLead: (hole: number) => boolean): PlaneJoint[] {
  const areas = areasOf(joined)
  return joined.holes.flatMap((found, hole) =>
    found.hole.plated === false || !isForLead(hole)
      ? []
      : found.lands.flatMap((land): PlaneJoint[] => {
          if (areas.get(joined.islands[land.at]!)! < LARGE_MM2) return []
          const joint = webs(found, land, joined)
          return joint ? [{ hole, layer: land.layer.name, at: middleOf(found.hole), ...joint }] : []
        }),
  )
}

/** How much copper there is of each piece on its layer, mm². */
function areasOf({ stack, islands }: JoinedCopper): ReadonlyMap<number, number> {
  const areas = new Map<number, number>()
  for (const { copper, first } of stack)
    copper.copper.forEach(({ solid }, at) => {
      const island = islands[first + at]!
      areas.set(island, (areas.get(island) ?? 0) + areaOf(solid))
    })
  return areas
}

type Webs = Pick<PlaneJoint, 'landMm' | 'websMm' | 'joinedMm' | 'share'>

/** Nothing where no copper leads away from the land. */
function webs({ hole }: FoundHole, land: PlacedLand, joined: JoinedCopper): Webs | undefined {
  const { drawn } = land
  const hasLand =
    (drawn.by === 'flash' || isCentred(drawn, middleOf(hole))) && land.land.lengthMm <= LAND_MAX_MM
  const inner: Solid = hasLand
    ? drawn.solid
    : { kind: 'capsule', a: hole.a, b: hole.b, radius: hole.diameterMm / 2 }
  const ways = outwards(
    inner,
    copperRound(inner, land, { joined, without: hasLand ? land.index : undefined }),
  )
  const least = ways.reduce((one, other) => (other.share < one.share ? other : one))
  if (least.share === 0) return undefined
  const landOut = ways.findLast(({ outMm, share }) => outMm < least.outMm && share >= ALL)?.outMm ?? 0
  const across = hasLand ? land.land.widthMm : hole.diameterMm
  const landMm = across + 2 * landOut
  if (least.share >= ALL) return { landMm, websMm: [], joinedMm: Math.PI * landMm, share: 1 }
  const websMm = widthsOf(least.path, least.covered)
  return { landMm, websMm, joinedMm: websMm.reduce((sum, mm) => sum + mm, 0), share: least.share }
}

interface CopperRound {
  readonly capsules: readonly Edge[]
  readonly polygons: readonly PolygonNear[]
}

/** Copper of the land's own piece round it, but for the land itself. */
function copperRound(
  inner: Solid,
  { layer, at: landAt }: PlacedLand,
  { joined, without }: { joined: JoinedCopper; without: number | undefined },
): CopperRound {
  const { minX, minY, maxX, maxY } = boxOf(inner)
  const [from, to]: readonly [Point, Point] = [
    [minX - OUT_TO_MM, minY - OUT_TO_MM],
    [maxX + OUT_TO_MM, maxY + OUT_TO_MM],
  ]
  const lines = joined.lines[joined.stack.indexOf(layer)]!
  const edges = groupedBy(
    lines.near({ a: from, b: to, radius: 0 }, ROUNDED_MM),
    (edge) => lines.owner[edge]!,
    (edge) => lines.edges[edge]!,
  )
  // A plane may surround all of the way without an edge near it.
  const owners = layer.copper
    .near(boxOfPoints([from, to]))
    .filter((at) => at !== without && joined.islands[layer.first + at] === joined.islands[landAt])
  const solids = owners.map((at) => ({ at, solid: layer.copper.copper[at]!.solid }))
  return {
    capsules: solids.flatMap(({ solid }) => (solid.kind === 'capsule' ? [solid] : [])),
    polygons: solids.flatMap(({ at, solid }) =>
      solid.kind === 'polygon'
        ? [{ edges: edges.get(at) ?? [], from, turns: winding(solid.rings, ...from) }]
        : [],
    ),
  }
}

interface Way {
  readonly outMm: number
  readonly path: readonly Point[]
  readonly covered: readonly Stretch[]
  readonly share: number
}

/** Ways round a land, each a step farther out, with what of each is copper. */
function outwards(inner: Solid, { capsules, polygons }: CopperRound): Way[] {
  const steps = Math.round(OUT_TO_MM / OUT_STEP_MM)
  return Array.from({ length: steps }, (_, step): Way => {
    const outMm = (step + 0.5) * OUT_STEP_MM
    const path = pathRound(inner, outMm)
    const covered = coveredAlong(path, capsules, polygons)
    const all = lengthAlong(path, [0, path.length])
    const share = covered.reduce((sum, stretch) => sum + lengthAlong(path, stretch), 0) / all
    return { outMm, path, covered, share }
  })
}

function pathRound(inner: Solid, outMm: number): Point[] {
  const [ring] =
    inner.kind === 'capsule' ? ringsOf({ ...inner, radius: inner.radius + outMm }) : inflated(inner, outMm)
  return Array.from({ length: ring!.length / 2 }, (_, at): Point => [ring![2 * at]!, ring![2 * at + 1]!])
}

/** A web wider than this share of the way round is measured along it, for straight across it would seem narrow. */
const STRAIGHT_MAX = 0.25

/** Straight across each web; one that lies over the start of the way is one. */
function widthsOf(path: readonly Point[], covered: readonly Stretch[]): number[] {
  const [first, last] = [covered[0]!, covered.at(-1)!]
  const over = covered.length > 1 && first[0] === 0 && last[1] === path.length
  const webs: readonly (readonly Stretch[])[] = over
    ? [[last, first], ...covered.slice(1, -1).map((web) => [web])]
    : covered.map((web) => [web])
  const all = lengthAlong(path, [0, path.length])
  return webs.map((parts) => {
    const along = parts.reduce((sum, part) => sum + lengthAlong(path, part), 0)
    if (along > STRAIGHT_MAX * all) return along
    const [a, b] = [placeOn(path, parts[0]![0]), placeOn(path, parts.at(-1)![1] % path.length)]
    return Math.hypot(b[0] - a[0], b[1] - a[1])
  })
}
