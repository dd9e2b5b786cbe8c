import { groupedBy } from '@/shared/grouped-by'
import type { CopperGraph } from './copper-graph'
import type { Point } from './geometry/solid'
import { middleOf, type JoinedCopper } from './joined-copper'
import { isInner } from './stack'
import { waysFrom, type Ways } from './ways-over-copper'

/** The way over the copper of a net between the two of its pins that lie farthest apart. */
export interface NetPath {
  readonly net: string
  readonly from: string
  readonly to: string
  readonly lengthMm: number
  /** Length over width, added up along the way, by whether the layer is an inner one. */
  readonly squares: { readonly external: number; readonly internal: number }
  /** Whether the way leads over a plane, whose resistance is not counted. */
  readonly overPlane: boolean
  readonly at: Point
  readonly layer: string
}

interface Pin {
  readonly name: string
  readonly copper: number
  readonly at: Point
  readonly layer: string
}

interface PathTerms {
  readonly netOf: (group: number) => string
  /** Whether a hole is for a lead. */
  readonly isPin: (hole: number) => boolean
}

/** Beyond this a net is not followed: pins times places. */
const MOST_WORK = 600_000

/**
 * For every net with two pins, the two that lie farthest apart by the least
 * squares between them. What flows beside the way only lowers the resistance,
 * so that the way's is the greatest it can be, but for what planes have.
 */
export function netPaths(joined: JoinedCopper, graph: CopperGraph, { netOf, isPin }: PathTerms): NetPath[] {
  const pieces = groupedBy(pinsOf(joined, isPin), ({ copper }) => joined.groups.of(copper))
  const sizes = new Map<number, number>()
  for (const copper of graph.copperOf) {
    const group = joined.groups.of(copper)
    sizes.set(group, (sizes.get(group) ?? 0) + 1)
  }
  return [...pieces].flatMap(([group, pins]) => {
    if (pins.length < 2 || pins.length * sizes.get(group)! > MOST_WORK) return []
    const farthest = farthestPins(pins, graph)
    return farthest ? [{ net: netOf(group), ...told(farthest, joined, graph) }] : []
  })
}

function pinsOf({ stack, holes }: JoinedCopper, isPin: (hole: number) => boolean): Pin[] {
  const ofHoles = holes.flatMap(({ hole, lands }, index): Pin[] => {
    const land = lands[0]
    if (!land || !isPin(index)) return []
    const { component, pin } = lands.map(({ drawn }) => drawn.attributes).find((each) => each.pin) ?? {}
    const at = middleOf(hole)
    return [{ name: nameOf(component, pin, at), copper: land.at, at, layer: land.layer.name }]
  })
  const drilled = new Set(holes.flatMap(({ lands }) => lands.map(({ at }) => at)))
  const onSurface = stack
    .filter((layer) => !isInner(layer))
    .flatMap(({ copper, first, name }) =>
      copper.copper.flatMap(({ by, box, attributes: { component, pin } }, index): Pin[] => {
        if (by !== 'flash' || component === undefined || pin === undefined) return []
        if (drilled.has(first + index)) return []
        const at: Point = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2]
        return [{ name: nameOf(component, pin, at), copper: first + index, at, layer: name }]
      }),
    )
  return [...ofHoles, ...onSurface]
}

const nameOf = (component: string | undefined, pin: string | undefined, [x, y]: Point): string =>
  component !== undefined && pin !== undefined
    ? `${component} pin ${pin}`
    : `the hole at ${x.toFixed(2)}, ${y.toFixed(2)}`

interface Farthest {
  readonly from: Pin
  readonly to: Pin
  /** The places between them, in order. */
  readonly places: readonly number[]
}

function farthestPins(pins: readonly Pin[], graph: CopperGraph): Farthest | undefined {
  let most: { squares: number; from: Pin; to: Pin; ways: Ways } | undefined
  pins.forEach((from, at) => {
    const ways = waysFrom(graph.placesOf[from.copper]!, graph)
    for (const to of pins.slice(at + 1)) {
      const squares = Math.min(
        ...graph.placesOf[to.copper]!.map((place) => ways.squares.get(place) ?? Infinity),
      )
      if (Number.isFinite(squares) && squares > (most?.squares ?? -1)) most = { squares, from, to, ways }
    }
  })
  if (!most) return undefined
  const { from, to, squares, ways } = most
  const places: number[] = []
  let place = graph.placesOf[to.copper]!.find((each) => ways.squares.get(each) === squares)
  for (; place !== undefined; place = ways.before.get(place)) places.unshift(place)
  return { from, to, places }
}

function told(
  { from, to, places }: Farthest,
  { stack }: JoinedCopper,
  graph: CopperGraph,
): Omit<NetPath, 'net'> {
  const squares = { external: 0, internal: 0 }
  let [lengthMm, widest] = [0, -1]
  let middle = places[0]!
  places.slice(1).forEach((place, at) => {
    const before = places[at]!
    const step = graph.steps[before]!.filter((each) => each.to === place).reduce((one, other) =>
      other.squares < one.squares ? other : one,
    )
    squares[graph.isInner(before) ? 'internal' : 'external'] += step.squares
    lengthMm += step.lengthMm
    if (step.squares > widest) [widest, middle] = [step.squares, place]
  })
  const layerOf = (copper: number) => stack.findLast(({ first }) => first <= copper)!
  const drawnBy = (place: number) => {
    const copper = graph.copperOf[place]!
    const layer = layerOf(copper)
    return { layer, drawn: layer.copper.copper[copper - layer.first]! }
  }
  const { layer, drawn } = drawnBy(middle)
  return {
    from: from.name,
    to: to.name,
    lengthMm,
    squares,
    overPlane: places.some((place) => drawnBy(place).drawn.by === 'region'),
    at: [(drawn.box.minX + drawn.box.maxX) / 2, (drawn.box.minY + drawn.box.maxY) / 2],
    layer: layer.name,
  }
}
