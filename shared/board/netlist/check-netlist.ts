import { groupedBy } from '@/shared/grouped-by'
import { byPlace } from '../geometry/by-place'
import { shiftOnto } from '../geometry/shift-onto'
import type { Point } from '../geometry/solid'
import { middleOf, pieceAt, type FoundHole, type JoinedCopper } from '../joined-copper'
import { isInner, type Layer } from '../stack'
import type { NetPoint } from './netlist-file'

/** One thing in which netlist and files do not agree, and where. */
export type NetlistDifference = { readonly at: Point; readonly layer: string } & (
  | { readonly kind: 'no hole' | 'no copper'; readonly net: string | undefined; readonly pin: string }
  | { readonly kind: 'not listed'; readonly diameterMm: number }
  | { readonly kind: 'size'; readonly pin: string; readonly listedMm: number; readonly drilledMm: number }
  | { readonly kind: 'plating'; readonly pin: string; readonly listedPlated: boolean }
  /** A net whose copper is in several pieces: one of the smaller ones is here. */
  | { readonly kind: 'open'; readonly net: string; readonly pieces: number }
  | { readonly kind: 'joined'; readonly nets: readonly string[] }
)

/** A netlist held against holes and copper of the files. */
export interface NetlistCheck {
  readonly nets: number
  readonly places: number
  /** Places that have their hole, or copper under them. */
  readonly met: number
  /** Whether enough of them do for netlist and files to be of one board in one place. */
  readonly liesOn: boolean
  /** By how much the netlist would have to move to lie on the holes, where it does not lie on them. */
  readonly shift: Point | undefined
  readonly differences: readonly NetlistDifference[]
}

/** What the check found, and what the netlist calls each piece of copper. */
export interface CheckedNetlist {
  readonly check: NetlistCheck
  readonly netsOfPiece: ReadonlyMap<number, readonly string[]>
}

/** Sizes nearer than this are one size, mm. */
const SAME_SIZE_MM = 0.02
/** With fewer places met than this share, netlist and files do not lie on each other. */
const LIES_ON_SHARE = 0.5

/** Holds every place of a netlist against the files, and the copper of every net against its places. */
export function checkNetlist(points: readonly NetPoint[], joined: JoinedCopper): CheckedNetlist {
  const holesAt = byPlace(joined.holes, ({ hole }) => middleOf(hole))
  const placed = points.map((point) => placeOf(point, joined, holesAt))
  const met = placed.filter(({ found }) => found).length
  const counts = { nets: new Set(points.flatMap(({ net }) => net ?? [])).size, places: points.length, met }
  if (met < LIES_ON_SHARE * points.length) {
    const listed = points.filter(({ kind }) => kind !== 'land').map(({ at }) => at)
    const shift = shiftOnto(
      listed,
      joined.holes.map(({ hole }) => middleOf(hole)),
    )
    return { check: { ...counts, shift, liesOn: false, differences: [] }, netsOfPiece: new Map() }
  }
  const netsOfPiece = netsByPiece(placed)
  const differences = [
    ...openNets(placed),
    ...joinedNets(placed, netsOfPiece),
    ...placed.flatMap(differencesAt),
    ...notListed(points, joined.holes),
  ]
  return { check: { ...counts, shift: undefined, liesOn: true, differences }, netsOfPiece }
}

/** A place of the netlist with the hole and the piece of copper that it stands for. */
interface Placed {
  readonly point: NetPoint
  readonly hole: FoundHole['hole'] | undefined
  readonly piece: number | undefined
  readonly layer: string
  readonly found: boolean
}

function placeOf(point: NetPoint, joined: JoinedCopper, holesAt: (at: Point) => FoundHole[]): Placed {
  const layers = layersOf(point, joined.stack)
  const layer = layers[0]?.name ?? 'top'
  if (point.kind === 'land') {
    const piece = layers.map((each) => pieceAt(joined, each, point.at)).find((at) => at !== undefined)
    return { point, hole: undefined, piece, layer, found: piece !== undefined }
  }
  const found = holesAt(point.at)[0]
  const land = found?.lands[0]
  const piece = land && joined.groups.of(land.at)
  return { point, hole: found?.hole, piece, layer, found: found !== undefined }
}

/** Layers that a place may be reached from. The last layer of a board is its bottom, whatever number it has. */
function layersOf({ layer, kind }: NetPoint, stack: readonly Layer[]): readonly Layer[] {
  if (layer === 0 || kind !== 'land') return stack
  if (layer === 1) return stack.filter(({ number }) => number === 0)
  const inner = stack.filter((each) => isInner(each) && each.number === layer)
  return inner.length > 0 ? inner : stack.filter(({ number }) => number === Infinity)
}

function netsByPiece(placed: readonly Placed[]): Map<number, string[]> {
  const nets = new Map<number, string[]>()
  for (const { piece, point } of placed) {
    if (piece === undefined || point.net === undefined) continue
    const there = nets.get(piece) ?? []
    if (!there.includes(point.net)) nets.set(piece, [...there, point.net])
  }
  return nets
}

/** Every piece of a net beside the one with most of its places. */
function openNets(placed: readonly Placed[]): NetlistDifference[] {
  const onCopper = placed.filter(({ piece, point }) => piece !== undefined && point.net !== undefined)
  return [...groupedBy(onCopper, ({ point }) => point.net!)].flatMap(([net, places]) => {
    const pieces = [...groupedBy(places, ({ piece }) => piece!).values()].sort(
      (one, other) => other.length - one.length,
    )
    return pieces.slice(1).map(([first]): NetlistDifference => {
      return { kind: 'open', net, pieces: pieces.length, at: first!.point.at, layer: first!.layer }
    })
  })
}

/** Every piece of copper that has places of more than one net: at the first place of the second. */
const joinedNets = (
  placed: readonly Placed[],
  netsOfPiece: ReadonlyMap<number, readonly string[]>,
): NetlistDifference[] =>
  [...netsOfPiece].flatMap(([piece, nets]) => {
    if (nets.length < 2) return []
    const second = placed.find((each) => each.piece === piece && each.point.net === nets[1])!
    return [{ kind: 'joined', nets, at: second.point.at, layer: second.layer }]
  })

const nameOf = ({ component, pin, via }: NetPoint): string =>
  via ? 'via' : [component, pin].filter(Boolean).join(' pin ')

function differencesAt({ point, hole, found, layer }: Placed): NetlistDifference[] {
  const { at, net, diameterMm, plated } = point
  const pin = nameOf(point)
  if (!found) return [{ kind: point.kind === 'land' ? 'no copper' : 'no hole', net, pin, at, layer }]
  if (!hole) return []
  const differences: NetlistDifference[] = []
  if (diameterMm !== undefined && !sizesOf(hole).some((mm) => Math.abs(mm - diameterMm) <= SAME_SIZE_MM))
    differences.push({ kind: 'size', pin, listedMm: diameterMm, drilledMm: hole.diameterMm, at, layer })
  if (plated !== undefined && hole.plated !== undefined && plated !== hole.plated)
    differences.push({ kind: 'plating', pin, listedPlated: plated, at, layer })
  return differences
}

/** Of a slot a netlist has room for one size: its width or its length. */
const sizesOf = ({ a, b, diameterMm }: FoundHole['hole']): number[] => [
  diameterMm,
  diameterMm + Math.hypot(b[0] - a[0], b[1] - a[1]),
]

/** Plated holes that the netlist leaves out: it lists every one. */
function notListed(points: readonly NetPoint[], holes: readonly FoundHole[]): NetlistDifference[] {
  const listed = byPlace(
    points.filter(({ kind }) => kind !== 'land'),
    ({ at }) => at,
  )
  return holes.flatMap(({ hole, lands }): NetlistDifference[] => {
    const at = middleOf(hole)
    if (hole.plated !== true || lands.length === 0 || listed(at).length > 0) return []
    return [{ kind: 'not listed', diameterMm: hole.diameterMm, at, layer: lands[0]!.layer.name }]
  })
}
