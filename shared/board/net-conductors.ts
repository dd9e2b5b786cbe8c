import { groupedBy } from '@/shared/grouped-by'
import type { Copper } from './copper'
import { insideTest } from './geometry/inside-test'
import type { Point, Solid } from './geometry/solid'
import type { JoinedCopper } from './joined-copper'
import type { Layer } from './stack'

/** The narrowest conductor of a net on one layer. Lengths in mm. */
export interface NetConductor {
  readonly net: string
  readonly layer: string
  readonly widthMm: number
  /** How long the net is so narrow there, all such lines together. */
  readonly lengthMm: number
  /** The middle of the longest such stretch. */
  readonly at: Point
  /** From one edge of the conductor to the other, there. */
  readonly ends: readonly [Point, Point]
}

/** A line, with its number among the copper of its layer. */
interface Line {
  readonly index: number
  readonly solid: Extract<Solid, { kind: 'capsule' }>
}

/**
 * For every net and layer, the narrowest line that no other copper of the net
 * makes wider: it stands free on both sides, for at least as long as it is wide.
 * Shorter necks are cooled by what they join (common practice, no published
 * source); necks of planes are not looked for.
 */
export function netConductors(
  { stack, groups }: JoinedCopper,
  netOf: (group: number) => string,
): NetConductor[] {
  return stack.flatMap((layer) => {
    const covered = coveredBy(layer)
    const byNet = groupedBy(linesOf(layer), ({ index }) => netOf(groups.of(layer.first + index)))
    return [...byNet].flatMap(([net, lines]) => {
      const found = narrowestFree(lines, layer, covered)
      return found ? [{ net, layer: layer.name, ...found }] : []
    })
  })
}

const linesOf = ({ copper }: Layer): Line[] =>
  copper.copper.flatMap(({ by, solid }, index) =>
    by === 'stroke' && solid.kind === 'capsule' && lengthOf(solid) > 0 ? [{ index, solid }] : [],
  )

const lengthOf = ({ a, b }: Line['solid']): number => Math.hypot(b[0] - a[0], b[1] - a[1])
const toMicrometre = (mm: number): number => Math.round(mm * 1000) / 1000
const widthOf = ({ solid }: Line): number => toMicrometre(2 * solid.radius)

function narrowestFree(
  lines: readonly Line[],
  layer: Layer,
  covered: Covered,
): Omit<NetConductor, 'net' | 'layer'> | undefined {
  const byWidth = [...groupedBy(lines, widthOf)].sort(([one], [other]) => one - other)
  for (const [widthMm, alike] of byWidth) {
    const stretches = alike.flatMap((line) => freeStretches(line, layer, covered))
    const long = stretches.filter(({ lengthMm }) => lengthMm >= widthMm)
    if (long.length === 0) continue
    const longest = long.reduce((one, other) => (other.lengthMm > one.lengthMm ? other : one))
    return {
      widthMm,
      lengthMm: stretches.reduce((sum, { lengthMm }) => sum + lengthMm, 0),
      at: longest.at,
      ends: longest.ends,
    }
  }
  return undefined
}

/** How finely a line is looked along: in steps of half its width, of which none is shorter than this, mm. */
const STEP_MM = 0.05
/** How far beside a line its neighbour would make it wider, mm. */
const BESIDE_MM = 0.001

interface Stretch {
  readonly lengthMm: number
  readonly at: Point
  readonly ends: readonly [Point, Point]
}

/** The stretches of a line with no other copper of its layer at either edge. */
function freeStretches({ index, solid }: Line, { copper }: Layer, covered: Covered): Stretch[] {
  const length = lengthOf(solid)
  const { a, b, radius } = solid
  const others = copper
    .near(copper.copper[index]!.box)
    .filter((at) => at !== index)
    .sort((one, other) => covered.edgeCounts[one]! - covered.edgeCounts[other]!)
  const steps = Math.max(1, Math.ceil(length / Math.max(STEP_MM, radius)))
  const along = [(b[0] - a[0]) / length, (b[1] - a[1]) / length] as const
  const beside = (share: number, off: number): Point => [
    a[0] + (b[0] - a[0]) * share - along[1] * off,
    a[1] + (b[1] - a[1]) * share + along[0] * off,
  ]
  const isFree = (step: number): boolean => {
    const share = (step + 0.5) / steps
    return [radius + BESIDE_MM, -radius - BESIDE_MM].every((off) => !covered.by(others, beside(share, off)))
  }
  const stretches: Stretch[] = []
  let from: number | undefined
  for (let step = 0; step <= steps; step++) {
    const free = step < steps && (others.length === 0 || isFree(step))
    if (free) from ??= step
    else if (from !== undefined) {
      const middle = (from + step) / 2 / steps
      stretches.push({
        lengthMm: ((step - from) / steps) * length,
        at: beside(middle, 0),
        ends: [beside(middle, radius), beside(middle, -radius)],
      })
      from = undefined
    }
  }
  return stretches
}

const edgeCount = ({ solid }: Copper): number =>
  solid.kind === 'capsule' ? 1 : solid.rings.reduce((sum, ring) => sum + ring.length / 2, 0)

interface Covered {
  /** Whether some of these things drawn, by their numbers, cover a place. */
  by(copper: readonly number[], at: Point): boolean
  /** Of everything drawn on the layer: those of few edges are tried first. */
  readonly edgeCounts: readonly number[]
}

function coveredBy({ copper: { copper } }: Layer): Covered {
  const tests = new Map<number, (at: Point) => boolean>()
  const isIn = (index: number, at: Point): boolean => {
    let test = tests.get(index)
    if (!test) tests.set(index, (test = insideTest(copper[index]!.solid)))
    return test(at)
  }
  return {
    edgeCounts: copper.map(edgeCount),
    by: (among, at) =>
      among.some((index) => {
        const { box } = copper[index]!
        const within = at[0] >= box.minX && at[0] <= box.maxX && at[1] >= box.minY && at[1] <= box.maxY
        return within && isIn(index, at)
      }),
  }
}
