import { TOUCHING_MM, type LayerEdges } from './connected'
import { edgeGap, isInside } from './geometry/distance'
import { nearestAlong } from './geometry/nearest-along'
import type { JoinedCopper } from './joined-copper'
import { isInner, type Layer } from './stack'

/** A way over copper from one place of it to another. */
export interface Step {
  readonly to: number
  /** Length over width: 0 from one thing drawn to another that it touches. */
  readonly squares: number
  readonly lengthMm: number
}

/** The copper of a board as places that current flows between, numbered through. */
export interface CopperGraph {
  readonly steps: readonly (readonly Step[])[]
  /** The thing drawn that a place is of, by its number among all copper. */
  readonly copperOf: readonly number[]
  /** The places of a thing drawn. */
  readonly placesOf: readonly (readonly number[])[]
  readonly isInner: (place: number) => boolean
}

/** Where two things drawn touch: as shares of their lengths, where they are lines. */
interface Contact {
  readonly one: number
  readonly other: number
  readonly along: number
  readonly otherAlong: number
}

/**
 * Lines become chains of places, one where they begin, end or touch something;
 * all else drawn is one place, across which nothing is lost. Plated holes join
 * the lands of their layers.
 */
export function copperGraph({ stack, lines, holes }: JoinedCopper): CopperGraph {
  const contacts = stack.flatMap((layer, at) => contactsOf(layer, lines[at]!))
  const shares = new Map<number, Set<number>>()
  const mark = (copper: number, share: number) => {
    const marked = shares.get(copper)
    if (marked) marked.add(share)
    else shares.set(copper, new Set([share]))
  }
  for (const { one, other, along, otherAlong } of contacts) {
    mark(one, along)
    mark(other, otherAlong)
  }
  const steps: Step[][] = []
  const copperOf: number[] = []
  const placesOf: number[][] = []
  const placeAt = new Map<string, number>()
  const inner: boolean[] = []
  for (const layer of stack)
    layer.copper.copper.forEach(({ solid }, index) => {
      const copper = layer.first + index
      const length =
        solid.kind === 'capsule' ? Math.hypot(solid.b[0] - solid.a[0], solid.b[1] - solid.a[1]) : 0
      const along =
        length > 0 ? [...new Set([0, 1, ...(shares.get(copper) ?? [])])].sort((p, q) => p - q) : [0]
      const places = along.map((share) => {
        placeAt.set(`${copper} ${share}`, steps.length)
        copperOf.push(copper)
        inner.push(isInner(layer))
        return steps.push([]) - 1
      })
      placesOf[copper] = places
      if (solid.kind !== 'capsule') return
      places.slice(1).forEach((to, at) => {
        const lengthMm = length * (along[at + 1]! - along[at]!)
        joinPlaces(steps, places[at]!, to, { squares: lengthMm / (2 * solid.radius), lengthMm })
      })
    })
  const placeOf = (copper: number, share: number): number =>
    placeAt.get(`${copper} ${share}`) ?? placesOf[copper]![0]!
  for (const { one, other, along, otherAlong } of contacts)
    joinPlaces(steps, placeOf(one, along), placeOf(other, otherAlong), TOUCH)
  for (const { hole, lands } of holes)
    if (hole.plated !== false)
      lands
        .slice(1)
        .forEach(({ at }) => joinPlaces(steps, placesOf[lands[0]!.at]![0]!, placesOf[at]![0]!, TOUCH))
  return { steps, copperOf, placesOf, isInner: (place) => inner[place]! }
}

const TOUCH = { squares: 0, lengthMm: 0 }

function joinPlaces(steps: Step[][], one: number, other: number, step: Omit<Step, 'to'>): void {
  steps[one]!.push({ to: other, ...step })
  steps[other]!.push({ to: one, ...step })
}

function contactsOf({ copper, first }: Layer, { edges, owner, near }: LayerEdges): Contact[] {
  const contacts = new Map<number, Contact>()
  const keyOf = (one: number, other: number): number => one * copper.copper.length + other
  const along = (mine: number, edge: number, other: number): number =>
    copper.copper[mine]!.solid.kind === 'capsule' ? nearestAlong(edges[edge]!, edges[other]!) : 0
  edges.forEach((edge, at) => {
    const mine = owner[at]!
    for (const otherAt of near(edge, TOUCHING_MM, (other) => other > at && owner[other] !== mine)) {
      const theirs = owner[otherAt]!
      const key = keyOf(mine, theirs)
      if (contacts.has(key) || edgeGap(edge, edges[otherAt]!) > TOUCHING_MM) continue
      contacts.set(key, {
        one: first + mine,
        other: first + theirs,
        along: along(mine, at, otherAt),
        otherAlong: along(theirs, otherAt, at),
      })
    }
  })
  copper.copper.forEach(({ solid, box }, at) => {
    if (solid.kind !== 'polygon') return
    for (const inside of copper.near(box)) {
      if (inside === at || contacts.has(keyOf(at, inside)) || contacts.has(keyOf(inside, at))) continue
      const { solid: other } = copper.copper[inside]!
      const [x, y] = other.kind === 'capsule' ? other.a : [other.rings[0]![0]!, other.rings[0]![1]!]
      if (!isInside(solid, x, y)) continue
      contacts.set(keyOf(at, inside), { one: first + at, other: first + inside, along: 0, otherAlong: 0 })
    }
  })
  return [...contacts.values()]
}
